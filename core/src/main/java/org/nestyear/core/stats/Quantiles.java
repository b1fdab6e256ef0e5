package org.nestyear.core.stats;

import java.util.Arrays;

/** Sample quantiles of definition 7 of Hyndman &amp; Fan 1996 (Am. Stat. 50:361): linear between order statistics. */
public final class Quantiles {
    private Quantiles() {}

    /**
     * The quantile of the values.
     *
     * @param values at least one finite value, in any order; not changed
     * @param share 0 to 1
     */
    public static double of(double[] values, double share) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        return ofSorted(sorted, share);
    }

    /** The quantile of values already in ascending order. */
    public static double ofSorted(double[] sorted, double share) {
        if (sorted.length == 0 || !(share >= 0 && share <= 1)) {
            throw new IllegalArgumentException(
                    "a quantile needs values and a share from 0 to 1, got " + sorted.length + " values, " + share);
        }
        double position = share * (sorted.length - 1);
        int below = (int) position;
        int above = Math.min(below + 1, sorted.length - 1);
        return sorted[below] + (position - below) * (sorted[above] - sorted[below]);
    }
}
