package org.nestyear.core.weather;

/** Water that short grass would give to the air on a day. Stateless; may be called from many threads. */
public final class ReferenceEvaporation {
    /** Factor of Hargreaves, FAO-56 equation 52. */
    private static final double HARGREAVES_FACTOR = 0.0023;
    /** Added to the mean temperature, °C, FAO-56 equation 52. */
    private static final double HARGREAVES_OFFSET_C = 17.8;
    /** Millimetres of water that a megajoule per square metre turns to vapour, FAO-56 equation 20. */
    private static final double MM_PER_MJ_M2 = 0.408;

    private ReferenceEvaporation() {}

    /**
     * Reference evapotranspiration by Hargreaves and Samani, as equation 52 of Allen et al. (1998), FAO Irrigation and
     * Drainage Paper 56: 0.0023 (Tmean + 17.8) √(Tmax − Tmin) Ra. Never below nothing.
     *
     * @param minC lowest temperature of the day, °C
     * @param maxC highest temperature of the day, °C, not below {@code minC}
     * @param extraterrestrialMjM2 the day's radiation above the atmosphere, MJ/m²
     * @return mm a day
     * @throws IllegalArgumentException if the temperatures are not the range of a day or the radiation is negative
     */
    public static double hargreavesMm(double minC, double maxC, double extraterrestrialMjM2) {
        double range = maxC - minC;
        if (!(range >= 0 && range < Double.POSITIVE_INFINITY) || !(extraterrestrialMjM2 >= 0)) {
            throw new IllegalArgumentException("minimum " + minC + " °C and maximum " + maxC + " °C with "
                    + extraterrestrialMjM2 + " MJ/m² are not a day");
        }
        double mean = (minC + maxC) / 2;
        return Math.max(
                0,
                HARGREAVES_FACTOR
                        * (mean + HARGREAVES_OFFSET_C)
                        * Math.sqrt(range)
                        * MM_PER_MJ_M2
                        * extraterrestrialMjM2);
    }
}
