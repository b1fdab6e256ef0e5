/** Where each number comes from: parameters with range and basis, sources, and the record of what was read. */
@NullMarked
package org.nestyear.core.source;

import org.jspecify.annotations.NullMarked;
