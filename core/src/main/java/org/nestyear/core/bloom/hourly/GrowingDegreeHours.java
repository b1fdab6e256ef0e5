package org.nestyear.core.bloom.hourly;

import org.nestyear.core.source.ParameterReader;

/**
 * Growing degree hours with an optimum (Anderson, Richardson &amp; Kesner 1986, the "ASYMCUR" curve): two quarter
 * cosines, rising from the base to the optimum and falling to nothing at the critical temperature.
 *
 * @param baseC no growth at or below, °C
 * @param bestC fastest growth, °C
 * @param topC no growth at or above, °C
 */
public record GrowingDegreeHours(double baseC, double bestC, double topC) implements HourlySum {
    public static GrowingDegreeHours of(ParameterReader parameters) {
        return new GrowingDegreeHours(
                parameters.value("gdh_base_c"), parameters.value("gdh_best_c"), parameters.value("gdh_top_c"));
    }

    /** {@inheritDoc} In °C·h. */
    @Override
    public double[] running(double[] tempC) {
        double[] sums = new double[tempC.length];
        double sum = 0;
        for (int h = 0; h < tempC.length; h++) {
            sum += gain(tempC[h]);
            sums[h] = sum;
        }
        return sums;
    }

    private double gain(double tempC) {
        if (tempC <= baseC || tempC >= topC) {
            return 0;
        }
        double rise = bestC - baseC;
        if (tempC <= bestC) {
            return rise / 2 * (1 + Math.cos(Math.PI + Math.PI * (tempC - baseC) / rise));
        }
        return rise * (1 + Math.cos(Math.PI / 2 + Math.PI / 2 * (tempC - bestC) / (topC - bestC)));
    }
}
