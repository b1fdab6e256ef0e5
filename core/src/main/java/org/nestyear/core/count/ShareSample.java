package org.nestyear.core.count;

import java.util.OptionalInt;

/**
 * How many to look at so that a share is known to within a margin: Cochran (1977), Sampling Techniques, n₀ = z²pq/e² and,
 * for a finite number, n₀ / (1 + (n₀ − 1)/N), rounded up.
 *
 * @param expected the share expected, 0 to 1; a half asks for the most
 * @param margin half the width of the interval, above 0, below 1
 * @param confidence its coverage, above 0 and below 1
 */
public record ShareSample(double expected, double margin, double confidence) {
    /** Guards whole numbers against the last bit of a quotient; numerical. */
    private static final double LAST_BITS = 1e-9;

    public ShareSample {
        if (!(expected >= 0 && expected <= 1) || !(margin > 0 && margin < 1) || !(confidence > 0 && confidence < 1)) {
            throw new IllegalArgumentException("a sample needs an expected share, a margin and a confidence, got "
                    + expected + ", " + margin + ", " + confidence);
        }
    }

    /**
     * The number to look at, at least 1.
     *
     * @param population how many there are in all, 1 or more; empty for very many
     */
    public int sampleSize(OptionalInt population) {
        double z = ShareLimits.normalQuantile(confidence);
        double many = z * z * expected * (1 - expected) / (margin * margin);
        double n = population.isEmpty() ? many : many / (1 + (many - 1) / population.getAsInt());
        double whole = Math.max(1, Math.ceil(n - LAST_BITS));
        return (int) Math.min(population.orElse(Integer.MAX_VALUE), whole);
    }
}
