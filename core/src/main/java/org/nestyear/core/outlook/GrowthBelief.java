package org.nestyear.core.outlook;

import org.nestyear.core.source.ReadLog;
import org.nestyear.core.stats.Draws;

/**
 * What is believed of the yearly growth of a stock: the published growth, moved towards the keeper's own years the more
 * there are of them. Normal for the mean of ln growth, scaled inverse χ² for its variance (Gelman et al. 2013, Bayesian Data
 * Analysis, section 3.3; from memory).
 *
 * @param mean expected ln growth
 * @param worth years that this mean is worth, above 0
 * @param variance scale of the variance of ln growth between years
 * @param degrees years that this variance is worth, above 0
 * @param ownWeight share of the keeper's own years in the mean, 0 to 1
 */
public record GrowthBelief(double mean, double worth, double variance, double degrees, double ownWeight) {
    /**
     * The belief.
     *
     * @param logGrowths ln growth of the keeper's own years; with too few of them they are not used
     * @param read rows of the table {@code outlook}
     */
    public static GrowthBelief of(double[] logGrowths, ReadLog read) {
        double first = Math.log(read.value("growth_year"));
        double between = read.value("growth_keepers_sd");
        double years = read.value("growth_years_sd");
        double degrees = read.value("growth_sd_worth");
        double worth = years * years / (between * between);
        boolean enough = logGrowths.length >= read.value("growth_least_years");
        int n = enough ? logGrowths.length : 0;
        double own = 0;
        for (int i = 0; i < n; i++) {
            own += logGrowths[i] / n;
        }
        double squares = 0;
        for (int i = 0; i < n; i++) {
            squares += (logGrowths[i] - own) * (logGrowths[i] - own);
        }
        double weight = n / (n + worth);
        double apart = enough ? weight * worth * (own - first) * (own - first) : 0;
        return new GrowthBelief(
                weight * own + (1 - weight) * first,
                n + worth,
                (degrees * years * years + squares + apart) / (degrees + n),
                degrees + n,
                weight);
    }

    /** One possible mean and standard deviation of ln growth. */
    double[] draw(Draws draws) {
        double spread = degrees * variance / (2 * draws.gamma(degrees / 2));
        return new double[] {mean + Math.sqrt(spread / worth) * draws.normal(), Math.sqrt(spread)};
    }
}
