/** Opened nests: what was lost, by which cause, and how sure that is. */
@NullMarked
package org.nestyear.core.losses;

import org.jspecify.annotations.NullMarked;
