package org.nestyear.core.weather;

/**
 * One run of days whose temperatures were not measured but filled in.
 *
 * @param gap the days, both ends included
 * @param method how they were filled
 * @param years how many other years the values were averaged from; 0 for {@link Method#LINEAR}, the fewest on any of
 *     the days otherwise
 */
public record Filling(Gap gap, Method method, int years) {
    /** Ways to fill a gap. */
    public enum Method {
        /** A straight line between the day before and the day after. */
        LINEAR,
        /** The mean of the same calendar day in the other years of the record. */
        CLIMATOLOGY
    }

    /** How many days were filled. */
    public long days() {
        return gap.days();
    }
}
