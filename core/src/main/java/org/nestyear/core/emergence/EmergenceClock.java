package org.nestyear.core.emergence;

import java.util.Arrays;
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
        double warmthAtRelease = sums.warmthAt(storage.releaseDay());
        double atStart = sums.readinessAt(storage.clockStart());
        int readyFrom = storage.clockStart();
        for (int i = 0; i < readinessNeed.length; i++) {
            double missing = readinessNeed[i] - storage.readiness();
            double warmthWhenReady;
            int from;
            if (missing <= 0) {
                double daysReady = -missing / storage.readinessPerDay();
                warmthWhenReady = sums.warmthAt(storage.clockStart()) - daysReady * storage.warmthPerDay();
                from = storage.clockStart();
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

    /**
     * Adds up the shares of bees that come out on each day.
     *
     * @param byDay receives the share of all bees out on day i; overwritten; as long as the days summed
     * @return share of bees that left their cocoons in the store, 0 to 1
     */
    public double sharesByDay(ThermalSums sums, Storage storage, double[] byDay) {
        Arrays.fill(byDay, 0);
        double weight = 1.0 / times.length;
        double lost = 0;
        for (double time : times(sums, storage)) {
            if (time == IN_STORE) {
                lost += weight;
            } else if (time != NOT_YET) {
                byDay[(int) time] += weight;
            }
        }
        return lost;
    }
}
