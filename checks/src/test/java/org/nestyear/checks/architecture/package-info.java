/** The rules the code keeps: arrows between packages, forbidden calls, sizes, names. */
@NullMarked
package org.nestyear.checks.architecture;

import org.jspecify.annotations.NullMarked;
