package org.nestyear.core.count;

import org.hipparchus.distribution.continuous.BetaDistribution;
import org.hipparchus.distribution.continuous.NormalDistribution;

/** What a tally leaves open about the true share. Stateless. */
public final class ShareLimits {
    /** Accuracy asked of the beta distribution's quantiles; numerical. */
    private static final double QUANTILE_ACCURACY = 1e-13;

    private ShareLimits() {}

    /**
     * The score interval of Wilson (1927), J. Am. Stat. Assoc. 22:209, without correction for continuity: method 3 of
     * Newcombe (1998a), Stat. Med. 17:857.
     *
     * @param level coverage, above 0 and below 1
     */
    public static Limits wilson(Tally tally, double level) {
        double z = normalQuantile(level);
        double n = tally.of();
        double p = tally.share();
        double middle = 2 * tally.found() + z * z;
        double half = z * Math.sqrt(z * z + 2 * 2 * n * p * (1 - p));
        double divisor = 2 * (n + z * z);
        double low = tally.found() == 0 ? 0 : Math.max(0, (middle - half) / divisor);
        double high = tally.found() == n ? 1 : Math.min(1, (middle + half) / divisor);
        return new Limits(low, high);
    }

    /**
     * The exact interval of Clopper and Pearson (1934), Biometrika 26:404, which covers the true share at least as often
     * as it says: quantiles of beta distributions.
     *
     * @param level coverage, above 0 and below 1
     */
    public static Limits clopperPearson(Tally tally, double level) {
        double tail = (1 - checked(level)) / 2;
        double found = tally.found();
        double rest = tally.of() - found;
        double low = found == 0 ? 0 : beta(found, rest + 1, tail);
        double high = rest == 0 ? 1 : beta(found + 1, rest, 1 - tail);
        return new Limits(low, high);
    }

    /**
     * The difference of two shares by Newcombe's hybrid of their score intervals: method 10 of Newcombe (1998b), Stat.
     * Med. 17:873.
     *
     * @param first share and its interval
     * @param second share and its interval, taken from the first
     */
    public static Limits difference(Estimate first, Estimate second) {
        double difference = first.share() - second.share();
        double below =
                Math.hypot(first.share() - first.limits().low(), second.limits().high() - second.share());
        double above = Math.hypot(
                first.limits().high() - first.share(),
                second.share() - second.limits().low());
        return new Limits(Math.max(-1, difference - below), Math.min(1, difference + above));
    }

    /**
     * The largest share under which finding none among {@code n} would not be rarer than one less the level:
     * 1 − (1 − level)^(1/n). One-sided; near 3/n at 95 %.
     *
     * @param n above 0
     */
    public static double noneFoundUpper(double n, double level) {
        if (!(n > 0)) {
            throw new IllegalArgumentException("none found needs some looked at, got " + n);
        }
        return -Math.expm1(Math.log1p(-checked(level)) / n);
    }

    /** The standard normal quantile whose negative and itself hold {@code level} between them. */
    static double normalQuantile(double level) {
        return new NormalDistribution(0, 1).inverseCumulativeProbability(upper(level));
    }

    /** The share below the upper end of a two-sided interval. */
    static double upper(double level) {
        return 1 - (1 - checked(level)) / 2;
    }

    private static double beta(double a, double b, double share) {
        return new BetaDistribution(a, b, QUANTILE_ACCURACY).inverseCumulativeProbability(share);
    }

    private static double checked(double level) {
        if (!(level > 0 && level < 1)) {
            throw new IllegalArgumentException("a level lies between 0 and 1, got " + level);
        }
        return level;
    }

    /** A share with its interval. */
    public record Estimate(double share, Limits limits) {}
}
