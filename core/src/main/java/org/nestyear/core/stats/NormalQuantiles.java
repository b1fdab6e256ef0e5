package org.nestyear.core.stats;

import org.hipparchus.distribution.continuous.NormalDistribution;

/** Equal-weight points of the standard normal distribution. */
public final class NormalQuantiles {
    private static final double MIDDLE = 0.5;

    private NormalQuantiles() {}

    /** The quantiles of the standard normal distribution at (i + ½)/n, ascending. */
    public static double[] midpoints(int n) {
        NormalDistribution normal = new NormalDistribution(0, 1);
        double[] z = new double[n];
        for (int i = 0; i < n; i++) {
            z[i] = normal.inverseCumulativeProbability((i + MIDDLE) / n);
        }
        return z;
    }
}
