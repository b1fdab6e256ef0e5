/** Settling, nesting and brood of released females, day by day. */
@NullMarked
package org.nestyear.core.nesting;

import org.jspecify.annotations.NullMarked;
