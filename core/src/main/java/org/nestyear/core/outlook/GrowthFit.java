package org.nestyear.core.outlook;

import java.util.Map;
import java.util.SortedMap;
import org.hipparchus.distribution.continuous.ChiSquaredDistribution;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.distribution.continuous.TDistribution;
import org.nestyear.core.stats.Draws;
import org.nestyear.core.stats.Quantiles;

/**
 * Growth of a stock counted once a year, as a random walk of its logarithm: Dennis, Munholland and Scott (1991), Ecol.
 * Monogr. 61:115. Between counts τ years apart, ln(N₂/N₁)/√τ is regressed through the origin on √τ; the slope is μ, the
 * residual mean square (over the transitions less one) σ². Years without a count are allowed for.
 *
 * @param mu mean yearly change of the logarithm
 * @param sigma2 variance of that change a year, 0 or more
 * @param transitions counts less one, 2 or more
 * @param years from the first count to the last
 * @param last the last count, above 0
 */
public record GrowthFit(double mu, double sigma2, int transitions, double years, double last) {
    /** Draws of μ and σ² behind the range of a chance; numerical. */
    private static final int DRAWS = 4000;
    /** Seed of those draws; numerical. */
    private static final long SEED = 1991;

    /** Fewest counts that show both a trend and its noise; numerical. */
    private static final int FEWEST = 3;

    /**
     * Fits the counts.
     *
     * @param counts number by year, three or more, each above 0
     * @throws IllegalArgumentException if there are fewer or one is not above 0
     */
    public static GrowthFit of(SortedMap<Integer, Double> counts) {
        if (counts.size() < FEWEST) {
            throw new IllegalArgumentException("a trend needs three counts or more, got " + counts.size());
        }
        int first = counts.firstKey();
        int last = counts.lastKey();
        for (Map.Entry<Integer, Double> count : counts.entrySet()) {
            if (!(count.getValue() > 0)) {
                throw new IllegalArgumentException("the count of " + count.getKey() + " is " + count.getValue()
                        + ", and only a number above 0 has a logarithm");
            }
        }
        int transitions = counts.size() - 1;
        double years = (double) last - first;
        double mu = Math.log(number(counts, last) / number(counts, first)) / years;
        double squares = 0;
        int before = first;
        for (int year : counts.tailMap(first + 1).keySet()) {
            double tau = (double) year - before;
            double residual = Math.log(number(counts, year) / number(counts, before)) - mu * tau;
            squares += residual * residual / tau;
            before = year;
        }
        return new GrowthFit(mu, squares / (transitions - 1), transitions, years, number(counts, last));
    }

    private static double number(SortedMap<Integer, Double> counts, int year) {
        Double count = counts.get(year);
        if (count == null) {
            throw new IllegalArgumentException("there is no count of " + year);
        }
        return count;
    }

    /** Half the width of the interval of μ: Student's t for the transitions less one times √(σ²/years). */
    public double muHalfWidth(double level) {
        return new TDistribution(transitions - 1.0).inverseCumulativeProbability(upper(level))
                * Math.sqrt(sigma2 / years);
    }

    /** Lower end of the interval of σ², by the χ² distribution. */
    public double sigma2Low(double level) {
        return sigma2At(upper(level));
    }

    /** Upper end of the interval of σ², by the χ² distribution. */
    public double sigma2High(double level) {
        return sigma2At(1 - upper(level));
    }

    private double sigma2At(double share) {
        double degrees = transitions - 1.0;
        return degrees * sigma2 / new ChiSquaredDistribution(degrees).inverseCumulativeProbability(share);
    }

    private static double upper(double level) {
        if (!(level > 0 && level < 1)) {
            throw new IllegalArgumentException("a level lies between 0 and 1, got " + level);
        }
        return 1 - (1 - level) / 2;
    }

    /**
     * The chance that the stock, from its last count, comes to a number at least once within so many years, from above or
     * from below.
     *
     * @param target number to come to, above 0
     * @param within years, above 0
     */
    public double reach(double target, double within) {
        checkReach(target, within);
        return reach(Math.log(target / last), within, mu, sigma2);
    }

    /**
     * What the few counts leave open about that chance: the shares {@code (1 ∓ level)/2} of the chances over draws of μ and
     * σ² from what the counts leave open about them (σ² from the χ² distribution, then μ from the normal one). Seeded, so
     * that the same counts give the same range.
     *
     * @return low and high
     */
    public double[] reachRange(double target, double within, double level) {
        checkReach(target, within);
        double distance = Math.log(target / last);
        double degrees = transitions - 1.0;
        Draws draws = new Draws(SEED);
        double[] chances = new double[DRAWS];
        for (int i = 0; i < DRAWS; i++) {
            double variance = degrees * sigma2 / (2 * draws.gamma(degrees / 2));
            double slope = mu + Math.sqrt(variance / years) * draws.normal();
            chances[i] = reach(distance, within, slope, variance);
        }
        return new double[] {Quantiles.of(chances, 1 - upper(level)), Quantiles.of(chances, upper(level))};
    }

    private static void checkReach(double target, double within) {
        if (!(target > 0 && target < Double.POSITIVE_INFINITY) || !(within > 0 && within < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(
                    "a target and the years to it are above 0, got " + target + " and " + within);
        }
    }

    /** First passage of a random walk with drift over a distance (inverse Gaussian distribution function). */
    private static double reach(double distance, double within, double drift, double variance) {
        double towards = distance < 0 ? -drift : drift;
        double d = Math.abs(distance);
        if (d == 0) {
            return 1;
        }
        double sd = Math.sqrt(variance * within);
        if (sd == 0) {
            return towards * within >= d ? 1 : 0;
        }
        double x = (towards * within - d) / sd;
        double y = (-towards * within - d) / sd;
        return Math.min(1, cumulative(x) + reflected(2 * towards * d / variance, x, y));
    }

    /** exp(a) Φ(y), where a − y²/2 = −x²/2; far out by the first terms of the tail, where exp(a) would overflow. */
    private static double reflected(double a, double x, double y) {
        boolean far = y < -FAR;
        double square = y * y;
        return far
                ? Math.exp(-x * x / 2) / (-y * Math.sqrt(2 * Math.PI)) * (1 - 1 / square + TAIL / (square * square))
                : Math.exp(a) * cumulative(y);
    }

    private static double cumulative(double z) {
        return new NormalDistribution(0, 1).cumulativeProbability(z);
    }

    /** Standard deviations from which the tail of the normal distribution is taken by its series; numerical. */
    private static final double FAR = 10;
    /** Third coefficient of that series; numerical. */
    private static final double TAIL = 3;
}
