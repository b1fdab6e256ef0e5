package org.nestyear.core.sun;

/**
 * Day length from latitude and day of year, in solar time.
 *
 * <p>The hour angle H of sunrise follows from cos H = (sin h₀ − sin φ sin δ) / (cos φ cos δ) with latitude φ,
 * declination δ and the height h₀ of the sun's centre when its upper rim touches the level horizon. δ is the series of
 * Spencer (1971), "Fourier series representation of the position of the sun", Search 2(5):172, in the day angle
 * Γ = 2π (day of year − 1) / 365; day 366 is simply one step further. The same form stands behind the hourly
 * temperature curve of {@link org.nestyear.core.weather.HourlyTemperatures}; clock times are in
 * {@link SunTimes}.
 *
 * <p>Stateless; may be called from many threads.
 */
public final class DayLength {
    /** Height of the sun's centre at rise and set: 34′ of refraction and 16′ of radius (the almanacs' convention). */
    private static final double RIM_ON_HORIZON_RAD = Math.toRadians(-0.8333);
    /** Degrees the earth turns in an hour, by definition of solar time: 360/24. */
    private static final double DEG_PER_HOUR = 15;
    /** Days in the day angle of Spencer (1971). */
    private static final double DAYS_IN_ANGLE = 365;
    /** Spencer (1971), constant term, radians. */
    private static final double SPENCER_MEAN = 0.006918;
    /** Spencer (1971), factor of cos Γ, radians. */
    private static final double SPENCER_COS_1 = -0.399912;
    /** Spencer (1971), factor of sin Γ, radians. */
    private static final double SPENCER_SIN_1 = 0.070257;
    /** Spencer (1971), factor of cos 2Γ, radians. */
    private static final double SPENCER_COS_2 = -0.006758;
    /** Spencer (1971), factor of sin 2Γ, radians. */
    private static final double SPENCER_SIN_2 = 0.000907;
    /** Spencer (1971), factor of cos 3Γ, radians. */
    private static final double SPENCER_COS_3 = -0.002697;
    /** Spencer (1971), factor of sin 3Γ, radians. */
    private static final double SPENCER_SIN_3 = 0.00148;
    /** Order of the last term of the series, Spencer (1971). */
    private static final double THIRD = 3;

    private DayLength() {}

    /**
     * Sunrise, sunset and the hours between.
     *
     * @param latitudeDeg degrees north, −90 to 90
     * @param dayOfYear 1 to 366
     * @throws IllegalArgumentException if latitude or day lies outside its range
     */
    public static DaySpan of(double latitudeDeg, int dayOfYear) {
        SolarYear.check(latitudeDeg, dayOfYear);
        double latitude = Math.toRadians(latitudeDeg);
        double declination = declinationRad(dayOfYear);
        double cosine = (Math.sin(RIM_ON_HORIZON_RAD) - Math.sin(latitude) * Math.sin(declination))
                / (Math.cos(latitude) * Math.cos(declination));
        if (cosine >= 1) {
            return DaySpan.POLAR_NIGHT;
        }
        if (cosine <= -1) {
            return DaySpan.POLAR_DAY;
        }
        double halfDay = Math.toDegrees(Math.acos(cosine)) / DEG_PER_HOUR;
        return new DaySpan(SolarYear.NOON_HOUR - halfDay, SolarYear.NOON_HOUR + halfDay, 2 * halfDay);
    }

    private static double declinationRad(int dayOfYear) {
        double angle = 2 * Math.PI / DAYS_IN_ANGLE * (dayOfYear - 1);
        return SPENCER_MEAN
                + SPENCER_COS_1 * Math.cos(angle)
                + SPENCER_SIN_1 * Math.sin(angle)
                + SPENCER_COS_2 * Math.cos(2 * angle)
                + SPENCER_SIN_2 * Math.sin(2 * angle)
                + SPENCER_COS_3 * Math.cos(THIRD * angle)
                + SPENCER_SIN_3 * Math.sin(THIRD * angle);
    }
}
