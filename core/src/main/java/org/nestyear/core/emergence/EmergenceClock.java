package org.nestyear.core.emergence;

import org.nestyear.core.stats.NormalQuantiles;

/**
 * Runs the two-stage clock over a fixed grid of bees that differ in their need of cold and of warmth, all with the
 * same weight. Not safe for use by several threads at once: it keeps a scratch array so that nothing is allocated per
 * release date.
 */
public final class EmergenceClock {
    /** Marks a bee that left its cocoon in the store. */
    public static final double IN_STORE = Double.NEGATIVE_INFINITY;
    /** Marks a bee not out by the end of the days summed. */
    public static final double NOT_YET = Double.POSITIVE_INFINITY;

    private final double[] readinessNeed;
    private final double[] warmthNeed;
    private final double[] times;

    /**
     * @param grid bees along each of the two needs; numerical, 11 serves a plan and 51 a printed quantile
     */
    public EmergenceClock(EmergenceSettings settings, int grid) {
        double[] z = NormalQuantiles.midpoints(grid);
        readinessNeed = new double[grid];
        warmthNeed = new double[grid];
        for (int i = 0; i < grid; i++) {
            readinessNeed[i] = settings.need() * Math.exp(settings.spread() * z[i]);
            warmthNeed[i] = settings.gateNeed() * Math.exp(settings.gateSpread() * z[i]);
        }
        times = new double[grid * grid];
    }

    /** Bees in the grid. */
    public int bees() {
        return times.length;
    }

    /**
     * When each bee of the grid leaves its cocoon.
     *
     * @return times in days (12.5 is the middle of day 12), or {@link #IN_STORE}, or {@link #NOT_YET}; the array is
     *     reused by the next call
     */
    public double[] times(ThermalSums sums, Storage storage) {
        return times(
                sums,
                storage.clockStart(),
                storage.readiness(),
                storage.readinessPerDay(),
                storage.warmthPerDay(),
                storage.releaseDay());
    }

    /** The same from the values of a {@link Storage}, for callers that make none. */
    public double[] times(
            ThermalSums sums,
            int clockStart,
            double readiness,
            double readinessPerDay,
            double warmthPerDay,
            int releaseDay) {
        double warmthAtRelease = sums.warmthAt(releaseDay);
        double atStart = sums.readinessAt(clockStart);
        int readyFrom = clockStart;
        for (int i = 0; i < readinessNeed.length; i++) {
            double missing = readinessNeed[i] - readiness;
            double warmthWhenReady;
            int from;
            if (missing <= 0) {
                double daysReady = -missing / readinessPerDay;
                warmthWhenReady = sums.warmthAt(clockStart) - daysReady * warmthPerDay;
                from = clockStart;
            } else {
                readyFrom = sums.dayOfReadiness(atStart + missing, readyFrom);
                from = readyFrom;
                warmthWhenReady = warmthWithin(sums, atStart + missing, readyFrom);
            }
            fill(sums, i * warmthNeed.length, warmthWhenReady, warmthAtRelease, from);
        }
        return times;
    }

    private static double warmthWithin(ThermalSums sums, double readiness, int day) {
        if (day >= sums.days()) {
            return Double.POSITIVE_INFINITY;
        }
        double part = sums.partOfReadiness(readiness, day);
        return sums.warmthAt(day) + part * (sums.warmthAt(day + 1) - sums.warmthAt(day));
    }

    private void fill(ThermalSums sums, int offset, double warmthWhenReady, double warmthAtRelease, int from) {
        int day = from;
        for (int j = 0; j < warmthNeed.length; j++) {
            double sum = warmthWhenReady + warmthNeed[j];
            if (sum <= warmthAtRelease) {
                times[offset + j] = IN_STORE;
                continue;
            }
            day = sum < Double.POSITIVE_INFINITY ? sums.dayOfWarmth(sum, day) : sums.days();
            times[offset + j] = day >= sums.days() ? NOT_YET : day + sums.partOfWarmth(sum, day);
        }
    }
}
