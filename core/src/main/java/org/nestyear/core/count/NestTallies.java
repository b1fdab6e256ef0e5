package org.nestyear.core.count;

import java.util.List;
import java.util.OptionalDouble;
import org.hipparchus.distribution.continuous.TDistribution;

/**
 * Tallies of several nests. Cells of a nest share a mother and a place, so that many cells of few nests say less than as
 * many cells each of its own nest.
 *
 * @param nests one tally a nest, two or more
 */
public record NestTallies(List<Tally> nests) {
    public NestTallies {
        nests = List.copyOf(nests);
        if (nests.size() < 2) {
            throw new IllegalArgumentException("the spread between nests needs two nests or more, got " + nests.size());
        }
    }

    /** All nests taken together. */
    public Tally total() {
        double found = 0;
        double of = 0;
        for (Tally nest : nests) {
            found += nest.found();
            of += nest.of();
        }
        return new Tally(found, of);
    }

    /**
     * How many times wider the variance of the share is than that of as many independent cells: the variance between
     * nests of a ratio of totals, over p(1 − p)/n (Rao and Scott 1992, Biometrics 48:577, from memory). Empty when none or all were
     * found, because nests without any difference show no spread.
     */
    public OptionalDouble designEffect() {
        Tally total = total();
        if (total.isNoneOrAll()) {
            return OptionalDouble.empty();
        }
        double p = total.share();
        double squares = 0;
        for (Tally nest : nests) {
            double residual = nest.found() - p * nest.of();
            squares += residual * residual;
        }
        int m = nests.size();
        return OptionalDouble.of(m / (m - 1.0) * squares / (total.of() * p * (1 - p)));
    }

    /**
     * The independent cells that say as much: all cells over the design effect, which is not taken below 1, and over the
     * squared ratio of Student's quantile for nests less one to the normal one, because few nests also tell little of
     * their spread (Korn and Graubard 1998, Survey Methodology 24:193, from memory). With none or all found the design effect is
     * taken as 1.
     *
     * @param level coverage of the interval to come, above 0 and below 1
     */
    public Tally effective(double level) {
        OptionalDouble effect = designEffect();
        return effect.isPresent() ? worth(total(), effect.getAsDouble(), nests.size(), level) : total();
    }

    /**
     * The independent cells that say as much as a tally of several nests.
     *
     * @param effect the design effect; below 1 it is taken as 1
     * @param nests nests from which it was found, 2 or more
     * @param level coverage of the interval to come, above 0 and below 1
     */
    public static Tally worth(Tally total, double effect, int nests, double level) {
        double normal = ShareLimits.normalQuantile(level);
        double student = new TDistribution(nests - 1.0).inverseCumulativeProbability(ShareLimits.upper(level));
        double shrink = normal / student;
        return total.among(total.of() / Math.max(1, effect) * shrink * shrink);
    }
}
