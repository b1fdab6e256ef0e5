package org.nestyear.core.stats;

import java.util.SplittableRandom;

/** Draws years again with replacement, the bootstrap of Efron 1979; the same seed gives the same draws. */
public final class Redrawing {
    private final SplittableRandom random;

    /** A sequence of draws for this seed. */
    public Redrawing(long seed) {
        random = new SplittableRandom(seed);
    }

    /** So many numbers from 0 to {@code n} − 1, some perhaps twice. */
    public int[] next(int count, int n) {
        return random.ints(count, 0, n).toArray();
    }
}
