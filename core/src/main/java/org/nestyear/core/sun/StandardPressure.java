package org.nestyear.core.sun;

/**
 * Air pressure to be expected at an elevation: equation 7 of Allen et al. (1998), FAO Irrigation and Drainage Paper 56,
 * P = 101.3 · ((293 − 0.0065 z) / 293)^5.26 kPa.
 */
public final class StandardPressure {
    /** Pressure at sea level, hPa, FAO-56 equation 7. */
    private static final double SEA_LEVEL_HPA = 1013;
    /** Temperature at sea level, K, FAO-56 equation 7. */
    private static final double SEA_LEVEL_K = 293;
    /** Cooling with height, K/m, FAO-56 equation 7. */
    private static final double LAPSE_K_PER_M = 0.0065;
    /** Exponent of FAO-56 equation 7. */
    private static final double EXPONENT = 5.26;

    private StandardPressure() {}

    /**
     * The standard pressure in hPa.
     *
     * @param elevationM metres above sea level, below 45 000
     * @throws IllegalArgumentException if the elevation is not a number or above the air of the formula
     */
    public static double hPa(double elevationM) {
        double cooled = 1 - LAPSE_K_PER_M * elevationM / SEA_LEVEL_K;
        if (!(cooled > 0)) {
            throw new IllegalArgumentException("elevation " + elevationM + " m has no standard pressure");
        }
        return SEA_LEVEL_HPA * Math.pow(cooled, EXPONENT);
    }
}
