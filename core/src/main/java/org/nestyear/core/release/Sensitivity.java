package org.nestyear.core.release;

/**
 * How far the best date moves when one uncertain thing is otherwise than taken.
 *
 * @param id what is changed: {@code poorer-neighbourhood}, {@code richer-neighbourhood},
 *     {@code food-blind-settling}, {@code food-bound-settling}
 * @param days days later (positive) or earlier (negative) than the plan
 */
public record Sensitivity(String id, int days) {}
