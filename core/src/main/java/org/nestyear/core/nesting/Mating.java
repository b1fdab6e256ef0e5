package org.nestyear.core.nesting;

/** Whether a live male is about when a female comes out. */
public final class Mating {
    private Mating() {}

    /**
     * Chance that a female coming out on each day is mated: 1 − e^(−m) with m live males expected about (assumed).
     *
     * @param malesOut males out on each day, in bees
     * @param death share of males dying a day
     * @param femalesOut females out on each day; days without any get a chance of 0
     * @param mated receives the chances of the days from {@code from} to before {@code to}; as long as {@code malesOut}
     * @param from first day on which any bee comes out
     * @param to day after the last on which a female does
     */
    public static void chances(double[] malesOut, double death, double[] femalesOut, double[] mated, int from, int to) {
        System.arraycopy(malesOut, from, mated, from, to - from);
        alive(mated, death, from, to);
        for (int d = from; d < to; d++) {
            mated[d] = femalesOut[d] > 0 ? -Math.expm1(-mated[d]) : 0;
        }
    }

    /**
     * Turns males coming out by day into males alive by day, in place.
     *
     * @param males males out on each day from {@code from} to before {@code to}, in bees
     * @param death share of males dying a day
     */
    public static void alive(double[] males, double death, int from, int to) {
        double about = 0;
        for (int d = from; d < to; d++) {
            about = about * (1 - death) + males[d];
            males[d] = about;
        }
    }
}
