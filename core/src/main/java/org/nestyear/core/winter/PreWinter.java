package org.nestyear.core.winter;

import org.nestyear.core.source.ParameterReader;

/**
 * What warmth between becoming adult and the cold costs: winter deaths rise in a straight line with degree-days
 * (Sgolastra et al. 2011, as used by a later study).
 *
 * @param baseC base of the degree-days, °C
 * @param slope per cent of deaths for each °C·d
 * @param offset per cent taken off
 * @param outside degree-days beyond which the line lies outside the data, °C·d
 */
public record PreWinter(double baseC, double slope, double offset, double outside) {
    private static final double HOURS = 24;
    private static final double ALL_PERCENT = 100;

    public static PreWinter of(ParameterReader parameters) {
        return new PreWinter(
                parameters.value("prewinter_base_c"),
                parameters.value("prewinter_death_slope"),
                parameters.value("prewinter_death_offset"),
                parameters.value("prewinter_outside"));
    }

    /** Degree-days above the base over a run of hours, °C·d. */
    public double degreeDays(double[] hourlyC) {
        double sum = 0;
        for (double celsius : hourlyC) {
            sum += Math.max(0, celsius - baseC) / HOURS;
        }
        return sum;
    }

    /** Winter deaths to expect, per cent, 0 to 100. */
    public double deathPercent(double degreeDays) {
        return Math.max(0, Math.min(ALL_PERCENT, slope * degreeDays - offset));
    }

    /** True where the line was not tested. */
    public boolean isOutside(double degreeDays) {
        return degreeDays > outside;
    }
}
