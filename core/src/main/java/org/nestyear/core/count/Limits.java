package org.nestyear.core.count;

/**
 * The two ends of an interval.
 *
 * @param low not above {@code high}
 */
public record Limits(double low, double high) {
    public Limits {
        if (!(low <= high)) {
            throw new IllegalArgumentException("an interval from " + low + " to " + high + " is none");
        }
    }

    /** True when the value lies between the ends or on one of them. */
    public boolean contains(double value) {
        return value >= low && value <= high;
    }
}
