package org.nestyear.core.sun;

/** The two arguments every formula of the solar year takes, and what they may be. */
final class SolarYear {
    /** Latitude of a pole, by definition. */
    private static final double POLE_DEG = 90;
    /** The last day of a leap year, by definition. */
    private static final int LAST_DAY = 366;

    /** The hour at which the sun stands highest, by definition of solar time. */
    static final double NOON_HOUR = 12;

    private SolarYear() {}

    static void check(double latitudeDeg, int dayOfYear) {
        if (!(latitudeDeg >= -POLE_DEG && latitudeDeg <= POLE_DEG)) {
            throw new IllegalArgumentException("latitude " + latitudeDeg + " is outside -90 to 90 degrees");
        }
        if (dayOfYear < 1 || dayOfYear > LAST_DAY) {
            throw new IllegalArgumentException("day of year " + dayOfYear + " is outside 1 to " + LAST_DAY);
        }
    }
}
