/** Mud for the walls of mason bees: what kind of soil it is, how it settles in a jar, how much water keeps it wet. */
@NullMarked
package org.nestyear.core.mud;

import org.jspecify.annotations.NullMarked;
