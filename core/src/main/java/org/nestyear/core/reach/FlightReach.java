package org.nestyear.core.reach;

import org.nestyear.core.source.ParameterReader;

/**
 * How far a bee of some size flies. Homing distances are those of Greenleaf et al. (2007), Oecologia 153:589: log10 of the
 * distance in km = a + b log10 of the span in mm. They say where bees find home from, not where they work: that is the
 * distance of Hofmann et al. (2020), J. Hymenopt. Res. 77:105, the same for all sizes, but never more than the homing
 * maximum.
 *
 * @param typicalKm distance from which half of the bees return, km
 * @param maxKm distance from which a tenth of the bees return, km
 * @param workingM distance within which flowers are worth counting, m
 */
public record FlightReach(double typicalKm, double maxKm, double workingM) {
    /** Metres in a kilometre, by definition; numerical. */
    private static final double M_PER_KM = 1000;

    /**
     * The reach of a bee.
     *
     * @param spanMm distance between the wing bases, mm, above 0
     * @throws IllegalArgumentException if the span is not above 0
     */
    public static FlightReach of(double spanMm, ParameterReader parameters) {
        if (!(spanMm > 0 && spanMm < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("a bee has some span between its wings, got " + spanMm + " mm");
        }
        double typical =
                power(spanMm, parameters.value("homing_typical_log"), parameters.value("homing_typical_power"));
        double max = power(spanMm, parameters.value("homing_max_log"), parameters.value("homing_max_power"));
        return new FlightReach(typical, max, Math.min(parameters.value("working_m"), max * M_PER_KM));
    }

    private static double power(double spanMm, double log, double power) {
        return Math.pow(10, log + power * Math.log10(spanMm));
    }
}
