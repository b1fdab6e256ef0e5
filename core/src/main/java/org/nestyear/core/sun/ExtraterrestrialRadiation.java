package org.nestyear.core.sun;

/**
 * Sunlight on a level surface above the atmosphere: the ceiling against which measured and estimated radiation is held.
 *
 * <p>Daily sum after Allen, Pereira, Raes and Smith (1998), "Crop evapotranspiration", FAO Irrigation and Drainage
 * Paper 56, equations 21 (sum), 23 (distance), 24 (declination) and 25 (sunset hour angle). The share of an hour is the
 * integral of the cosine of the zenith angle over that hour, cut at sunrise and sunset, divided by the integral over
 * the day: equation 28 with the hour's ends held inside the day, so that the shares sum to one.
 *
 * <p>Stateless; may be called from many threads.
 */
public final class ExtraterrestrialRadiation {
    /** Solar constant of FAO-56 equation 21, 0.0820 MJ/m² per minute. */
    private static final double SOLAR_CONSTANT_MJ_M2_MIN = 0.0820;
    /** Minutes in a day, as in FAO-56 equation 21. */
    private static final double MINUTES_A_DAY = 24 * 60;
    /** Days in the day angle of FAO-56 equations 23 and 24. */
    private static final double DAYS_IN_ANGLE = 365;
    /** Amplitude of the inverse squared distance, FAO-56 equation 23. */
    private static final double DISTANCE_AMPLITUDE = 0.033;
    /** Amplitude of the declination, radians, FAO-56 equation 24. */
    private static final double DECLINATION_AMPLITUDE_RAD = 0.409;
    /** Phase of the declination, radians, FAO-56 equation 24. */
    private static final double DECLINATION_PHASE_RAD = 1.39;

    private ExtraterrestrialRadiation() {}

    /**
     * The day's sum in MJ/m²; zero in polar night.
     *
     * @param latitudeDeg degrees north, −90 to 90
     * @param dayOfYear 1 to 366
     * @throws IllegalArgumentException if latitude or day lies outside its range
     */
    public static double dailyMjM2(double latitudeDeg, int dayOfYear) {
        SolarYear.check(latitudeDeg, dayOfYear);
        double latitude = Math.toRadians(latitudeDeg);
        double declination = declinationRad(dayOfYear);
        double distance = 1 + DISTANCE_AMPLITUDE * Math.cos(2 * Math.PI / DAYS_IN_ANGLE * dayOfYear);
        double sunset = sunsetAngleRad(latitude, declination);
        return MINUTES_A_DAY
                / Math.PI
                * SOLAR_CONSTANT_MJ_M2_MIN
                * distance
                * halfDayIntegral(latitude, declination, sunset);
    }

    /**
     * How the day's sum is spread over its hours.
     *
     * @param latitudeDeg degrees north, −90 to 90
     * @param dayOfYear 1 to 366
     * @return 24 shares, index h for the solar hour from h to h + 1; they sum to 1, or are all zero in polar night
     * @throws IllegalArgumentException if latitude or day lies outside its range
     */
    public static double[] hourlyShares(double latitudeDeg, int dayOfYear) {
        SolarYear.check(latitudeDeg, dayOfYear);
        double latitude = Math.toRadians(latitudeDeg);
        double declination = declinationRad(dayOfYear);
        double sunset = sunsetAngleRad(latitude, declination);
        double[] shares = new double[24];
        double whole = 2 * halfDayIntegral(latitude, declination, sunset);
        if (!(whole > 0)) {
            return shares;
        }
        for (int hour = 0; hour < 24; hour++) {
            double from = Math.max(-sunset, Math.min(sunset, hourAngleRad(hour)));
            double to = Math.max(-sunset, Math.min(sunset, hourAngleRad(hour + 1)));
            shares[hour] = Math.max(
                    0,
                    (halfDayIntegral(latitude, declination, to) - halfDayIntegral(latitude, declination, from))
                            / whole);
        }
        return shares;
    }

    /** The integral of the cosine of the zenith angle from noon to an hour angle. */
    private static double halfDayIntegral(double latitude, double declination, double hourAngle) {
        return hourAngle * Math.sin(latitude) * Math.sin(declination)
                + Math.cos(latitude) * Math.cos(declination) * Math.sin(hourAngle);
    }

    private static double hourAngleRad(int solarHour) {
        return Math.PI * (solarHour - SolarYear.NOON_HOUR) / SolarYear.NOON_HOUR;
    }

    private static double declinationRad(int dayOfYear) {
        return DECLINATION_AMPLITUDE_RAD * Math.sin(2 * Math.PI / DAYS_IN_ANGLE * dayOfYear - DECLINATION_PHASE_RAD);
    }

    /** Equation 25, held to 0 in polar night and π in polar day. */
    private static double sunsetAngleRad(double latitude, double declination) {
        double cosine = -Math.tan(latitude) * Math.tan(declination);
        return Math.acos(Math.max(-1, Math.min(1, cosine)));
    }
}
