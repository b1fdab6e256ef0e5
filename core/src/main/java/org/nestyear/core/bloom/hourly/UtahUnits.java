package org.nestyear.core.bloom.hourly;

import java.util.stream.IntStream;
import org.nestyear.core.source.ParameterReader;

/**
 * Chill units of the Utah model (Richardson, Seeley &amp; Walker 1974): a weight for each hour by its temperature,
 * negative when warm. The sum can fall, and starts below zero in a warm autumn.
 */
public final class UtahUnits implements HourlySum {
    /** A numerical choice of the published table, not a biological one: how many limits part its classes. */
    private static final int LIMITS = 6;

    private final double[] limitsC;
    private final double[] weights;

    private UtahUnits(double[] limitsC, double[] weights) {
        this.limitsC = limitsC;
        this.weights = weights;
    }

    public static UtahUnits of(ParameterReader parameters) {
        return new UtahUnits(
                IntStream.rangeClosed(1, LIMITS)
                        .mapToDouble(i -> parameters.value("utah_limit_" + i + "_c"))
                        .toArray(),
                IntStream.rangeClosed(0, LIMITS)
                        .mapToDouble(i -> parameters.value("utah_weight_" + i))
                        .toArray());
    }

    @Override
    public double[] running(double[] tempC) {
        double[] sums = new double[tempC.length];
        double sum = 0;
        for (int h = 0; h < tempC.length; h++) {
            sum += weight(tempC[h]);
            sums[h] = sum;
        }
        return sums;
    }

    /** Weight of one hour: each class is open below and closed above. */
    private double weight(double tempC) {
        int above = 0;
        while (above < limitsC.length && tempC > limitsC[above]) {
            above++;
        }
        return weights[above];
    }
}
