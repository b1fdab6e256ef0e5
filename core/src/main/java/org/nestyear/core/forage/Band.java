package org.nestyear.core.forage;

/**
 * A number known within a band.
 *
 * @param low lower end of eight in ten, 0 or more
 * @param middle the middle
 * @param high upper end
 */
public record Band(double low, double middle, double high) {
    /** Nothing at all. */
    public static final Band NONE = new Band(0, 0, 0);

    public Band {
        if (!(0 <= low && low <= middle && middle <= high && high < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("a band must rise from 0 on, got " + low + ", " + middle + ", " + high);
        }
    }

    /** This and another, whose errors are taken to go the same way. */
    public Band plus(Band other) {
        return new Band(low + other.low, middle + other.middle, high + other.high);
    }

    /** So many times this. */
    public Band times(double factor) {
        return new Band(low * factor, middle * factor, high * factor);
    }
}
