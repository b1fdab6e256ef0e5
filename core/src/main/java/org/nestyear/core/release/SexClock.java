package org.nestyear.core.release;

import java.util.Arrays;
import org.nestyear.core.emergence.EmergenceClock;
import org.nestyear.core.emergence.EmergenceSettings;
import org.nestyear.core.emergence.ThermalSums;

/** When the bees of one sex come out in one member. Not for several threads at once. */
final class SexClock {
    /** Bees along each axis of the emergence grid; numerical. */
    private static final int GRID = 11;

    private final EmergenceSettings settings;
    private final ThermalSums sums;
    private final EmergenceClock clock;

    private SexClock(EmergenceSettings settings, ThermalSums sums) {
        this.settings = settings;
        this.sums = sums;
        clock = new EmergenceClock(settings, GRID);
    }

    /**
     * The clock over a member's hours.
     *
     * @param cocoonC temperature of the cocoon, °C, 24 values a day
     */
    static SexClock of(EmergenceSettings settings, double[] cocoonC) {
        return new SexClock(settings, ThermalSums.ofHours(settings, cocoonC));
    }

    /** The clock of the other sex over the same hours; what both share is not worked out again. */
    SexClock ofOtherSex(EmergenceSettings other, double[] cocoonC) {
        return new SexClock(other, sums.ofOtherSex(settings, other, cocoonC));
    }

    /**
     * When each bee of the grid comes out; see {@link EmergenceClock#times}.
     *
     * @param coldStart day from which bees at air temperature count their cold
     * @param chillDays days of chill by the release
     */
    double[] times(Stock stock, int coldStart, double chillDays, int release) {
        if (!stock.isInFridge()) {
            int start = Math.max(0, coldStart);
            return clock.times(sums, start, 0, 1, 0, Math.max(start, release));
        }
        double rate = settings.readinessPerDay(stock.chillC());
        return clock.times(sums, release, rate * chillDays, rate, settings.warmthPerDay(stock.chillC()), release);
    }

    /**
     * Adds up the shares of bees that come out on each day.
     *
     * @param byDay receives the share of all bees out on day i from the release on; overwritten
     * @return the day after the last on which any come out, at least the release
     */
    int sharesByDay(Stock stock, int coldStart, double chillDays, int release, double[] byDay) {
        Arrays.fill(byDay, 0);
        double[] times = times(stock, coldStart, chillDays, release);
        double weight = 1.0 / times.length;
        int end = release;
        for (double time : times) {
            if (time != EmergenceClock.IN_STORE && time != EmergenceClock.NOT_YET) {
                int day = (int) time;
                byDay[day] += weight;
                end = Math.max(end, day + 1);
            }
        }
        return end;
    }
}
