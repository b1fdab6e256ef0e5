/** Flight, cells and the nesting season, against field counts and against itself. */
@NullMarked
package org.nestyear.checks.nesting;

import org.jspecify.annotations.NullMarked;
