package org.nestyear.core.weather;

/** Water in the air after FAO-56 (Allen et al. 1998), equation 11 and its inverse; good from −10 to 50 °C. */
public final class Humidity {
    /** Saturation at 0 °C, kPa: FAO-56, equation 11. */
    private static final double AT_ZERO_KPA = 0.6108;
    /** FAO-56, equation 11. */
    private static final double STEEP = 17.27;
    /** FAO-56, equation 11, °C. */
    private static final double SHIFT_C = 237.3;
    /** Hundredths in a whole, by definition. */
    private static final double PERCENT = 100;

    private Humidity() {}

    /** Saturation vapour pressure, kPa. */
    public static double saturationKPa(double celsius) {
        return AT_ZERO_KPA * Math.exp(STEEP * celsius / (celsius + SHIFT_C));
    }

    /**
     * How much more water the air could hold, kPa.
     *
     * @param percent relative humidity, 0 to 100
     */
    public static double deficitKPa(double celsius, double percent) {
        return saturationKPa(celsius) * (1 - percent / PERCENT);
    }

    /**
     * Temperature below which water settles on things, °C.
     *
     * @param percent relative humidity, above 0 to 100
     */
    public static double dewPointC(double celsius, double percent) {
        double log = Math.log(saturationKPa(celsius) * percent / PERCENT / AT_ZERO_KPA);
        return SHIFT_C * log / (STEEP - log);
    }
}
