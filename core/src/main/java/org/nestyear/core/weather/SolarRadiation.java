package org.nestyear.core.weather;

/** Solar radiation of a day estimated where it was not measured. Stateless; may be called from many threads. */
public final class SolarRadiation {
    private SolarRadiation() {}

    /**
     * Radiation from the temperature range: clear days have a wide one. Hargreaves and Samani, as equation 50 of Allen
     * et al. (1998), FAO Irrigation and Drainage Paper 56: Rs = kRs · √(Tmax − Tmin) · Ra.
     *
     * <p>The estimate is held at or below the extraterrestrial sum, which no weather exceeds.
     *
     * @param minC lowest temperature of the day, °C
     * @param maxC highest temperature of the day, °C, not below {@code minC}
     * @param extraterrestrialMjM2 the day's radiation above the atmosphere, MJ/m²
     * @param adjustmentKrs adjustment coefficient in 1/√°C; about .16 inland and .19 at a coast (FAO-56)
     * @return MJ/m² on a level surface
     * @throws IllegalArgumentException if a value is not a finite number, the range is negative, or one of the last two
     *     is negative
     */
    public static double fromTemperatureRangeMjM2(
            double minC, double maxC, double extraterrestrialMjM2, double adjustmentKrs) {
        double range = maxC - minC;
        if (!(range >= 0 && range < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(
                    "minimum " + minC + " °C and maximum " + maxC + " °C are not the range of a day");
        }
        if (!(extraterrestrialMjM2 >= 0) || !(adjustmentKrs >= 0)) {
            throw new IllegalArgumentException("extraterrestrial radiation " + extraterrestrialMjM2
                    + " MJ/m² and coefficient " + adjustmentKrs + " must both be 0 or more");
        }
        return Math.min(1, adjustmentKrs * Math.sqrt(range)) * extraterrestrialMjM2;
    }
}
