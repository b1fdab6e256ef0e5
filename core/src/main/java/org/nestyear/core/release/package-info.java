/** The release curve, its window, and the plan of releases. */
@NullMarked
package org.nestyear.core.release;

import org.jspecify.annotations.NullMarked;
