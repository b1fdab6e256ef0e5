/** Whole springs drawn as small tables, and the advice that must come of them. All places and bees are invented. */
@NullMarked
package org.nestyear.checks.scenario;

import org.jspecify.annotations.NullMarked;
