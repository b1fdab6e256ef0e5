package org.nestyear.core.sun;

/**
 * When the sun is up on one day, in solar hours: hour 12 is solar noon, so there is no clock, zone or equation of
 * time in it.
 *
 * @param sunriseHour solar hour of sunrise, 0 to 12; 0 when the sun stays up, 12 when it stays down
 * @param sunsetHour solar hour of sunset, 12 to 24; 24 when the sun stays up, 12 when it stays down
 * @param lengthHours hours between the two, 0 in polar night and 24 in polar day
 */
public record DaySpan(double sunriseHour, double sunsetHour, double lengthHours) {
    static final DaySpan POLAR_DAY = new DaySpan(0, 24, 24);
    static final DaySpan POLAR_NIGHT = new DaySpan(SolarYear.NOON_HOUR, SolarYear.NOON_HOUR, 0);

    public DaySpan {
        if (!(sunriseHour >= 0 && sunriseHour <= sunsetHour && sunsetHour <= 24 && lengthHours >= 0)) {
            throw new IllegalArgumentException("sunrise " + sunriseHour + " and sunset " + sunsetHour
                    + " are not solar hours of one day, 0 to 24 in this order");
        }
    }

    /** True when the sun never sets on this day. */
    public boolean isPolarDay() {
        return lengthHours == 24;
    }

    /** True when the sun never rises on this day. */
    public boolean isPolarNight() {
        return lengthHours == 0;
    }
}
