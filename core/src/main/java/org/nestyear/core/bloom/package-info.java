/** Bloom of the target plants and of everything else in reach. */
@NullMarked
package org.nestyear.core.bloom;

import org.jspecify.annotations.NullMarked;
