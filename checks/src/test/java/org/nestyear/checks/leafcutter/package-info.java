/** Leafcutter bees against the published calendar, worked cases and limits, and what must hold of any warming. */
@NullMarked
package org.nestyear.checks.leafcutter;

import org.jspecify.annotations.NullMarked;
