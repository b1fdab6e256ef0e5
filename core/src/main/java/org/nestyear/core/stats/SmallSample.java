package org.nestyear.core.stats;

import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.distribution.continuous.TDistribution;

/** What a few values leave open about their mean: Student's distribution (Student 1908, Biometrika 6:1). */
public final class SmallSample {
    /** One-sided, for a two-sided interval of 90 %. */
    private static final double UPPER = 0.95;

    private SmallSample() {}

    /**
     * Standard errors from the mean of {@code n} values to either end of its two-sided 90 % interval; infinite for one
     * value, which tells nothing of its error.
     */
    public static double standardErrors(int n) {
        return n < 2 ? Double.POSITIVE_INFINITY : new TDistribution(n - 1.0).inverseCumulativeProbability(UPPER);
    }

    /**
     * How much wider than its percentiles say the 90 % interval of a bootstrap of {@code n} values must be: redrawing n
     * values gives a variance smaller by (n − 1)/n than theirs, and the tails of the normal distribution instead of
     * Student's. Infinite for one value.
     */
    public static double wideningOfBootstrap(int n) {
        double normal = new NormalDistribution(0, 1).inverseCumulativeProbability(UPPER);
        return n < 2 ? Double.POSITIVE_INFINITY : standardErrors(n) / normal * Math.sqrt(n / (n - 1.0));
    }
}
