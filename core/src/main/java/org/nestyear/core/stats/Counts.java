package org.nestyear.core.stats;

import org.hipparchus.special.Beta;
import org.hipparchus.special.Gamma;

/** Chances of whole numbers by Poisson's and the binomial law. */
public final class Counts {
    private Counts() {}

    /**
     * Chance of exactly {@code n} where {@code mean} are expected.
     *
     * @param n 0 or more
     * @param mean 0 or more
     */
    public static double poisson(int n, double mean) {
        if (mean <= 0) {
            return n == 0 ? 1 : 0;
        }
        return Math.exp(n * Math.log(mean) - mean - Gamma.logGamma(n + 1.0));
    }

    /**
     * Chance of exactly {@code k} out of {@code n}.
     *
     * @param chance chance of each, above 0 and below 1
     */
    public static double binomial(int k, int n, double chance) {
        if (k < 0 || k > n) {
            return 0;
        }
        double ways = Gamma.logGamma(n + 1.0) - Gamma.logGamma(k + 1.0) - Gamma.logGamma(n - k + 1.0);
        return Math.exp(ways + k * Math.log(chance) + (n - k) * Math.log1p(-chance));
    }

    /**
     * Chance of {@code k} or fewer out of {@code n}.
     *
     * @param chance chance of each, above 0 and below 1
     */
    public static double binomialAtMost(int k, int n, double chance) {
        return k >= n ? 1 : Beta.regularizedBeta(1 - chance, (double) n - k, k + 1.0);
    }
}
