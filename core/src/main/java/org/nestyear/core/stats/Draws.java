package org.nestyear.core.stats;

import java.util.SplittableRandom;

/** A sequence of random numbers; the same seed gives the same numbers on every machine. */
public final class Draws {
    /** Weight of the last of the 53 bits of a double in [0, 1). */
    private static final double LAST_BIT = 0x1.0p-53;
    /** How many bits of a long lie beyond those of a double. */
    private static final int SPARE_BITS = 11;
    /** Marsaglia and Tsang (2000): shape less this third. */
    private static final double THIRD = 1 / 3.0;

    private final SplittableRandom random;

    /** The sequence of this seed. */
    public Draws(long seed) {
        random = new SplittableRandom(seed);
    }

    /** Even over 0 (included) to 1 (not included). */
    public double uniform() {
        return (random.nextLong() >>> SPARE_BITS) * LAST_BIT;
    }

    /** Standard normal, by Box and Muller (1958). */
    public double normal() {
        double radius = StrictMath.sqrt(-2 * StrictMath.log(1 - uniform()));
        return radius * StrictMath.cos(2 * Math.PI * uniform());
    }

    /**
     * Gamma with scale 1, by Marsaglia and Tsang (2000), ACM TOMS 26:363.
     *
     * @param shape above 0; also the mean
     * @throws IllegalArgumentException if the shape is not above 0
     */
    public double gamma(double shape) {
        if (!(shape > 0)) {
            throw new IllegalArgumentException("a gamma distribution needs a shape above 0, got " + shape);
        }
        if (shape < 1) {
            return gamma(shape + 1) * StrictMath.pow(1 - uniform(), 1 / shape);
        }
        double d = shape - THIRD;
        double c = THIRD / StrictMath.sqrt(d);
        while (true) {
            double x = normal();
            double v = 1 + c * x;
            double cube = v * v * v;
            if (v > 0 && StrictMath.log(1 - uniform()) < x * x / 2 + d * (1 - cube + StrictMath.log(cube))) {
                return d * cube;
            }
        }
    }

    /**
     * How many of so many come about, each with the same chance; above {@link #MANY} by the normal distribution.
     *
     * @param number how many are tried, 0 or more
     * @param chance 0 to 1
     */
    public long binomial(long number, double chance) {
        if (number < 0 || !(chance >= 0 && chance <= 1)) {
            throw new IllegalArgumentException("no binomial distribution of " + number + " with " + chance);
        }
        if (number > MANY) {
            double sd = StrictMath.sqrt(number * chance * (1 - chance));
            return Math.max(0, Math.min(number, Math.round(number * chance + sd * normal())));
        }
        long came = 0;
        for (long i = 0; i < number; i++) {
            came += uniform() < chance ? 1 : 0;
        }
        return came;
    }

    /**
     * Poisson: the waits of one exponential after the other; above {@link #MANY} by the normal distribution.
     *
     * @param mean 0 or more
     */
    public long poisson(double mean) {
        if (!(mean >= 0 && mean < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("a Poisson distribution needs a mean of 0 or more, got " + mean);
        }
        if (mean > MANY) {
            return Math.max(0, Math.round(mean + StrictMath.sqrt(mean) * normal()));
        }
        long came = -1;
        double waited = 0;
        while (waited <= mean) {
            waited -= StrictMath.log(1 - uniform());
            came++;
        }
        return came;
    }

    /** Number above which counts are drawn from the normal distribution; numerical. */
    private static final int MANY = 200;
}
