package org.nestyear.core.leafcutter;

/**
 * When what comes out of wintered leafcutter cells under a course of temperatures.
 *
 * <p>Stateless; may be called from many threads.
 */
public final class WarmthClock {
    private final WarmthSettings settings;

    public WarmthClock(WarmthSettings settings) {
        this.settings = settings;
    }

    /**
     * When a milestone is reached: by the quicker and by the slower of the two bases, half a day wider on both sides, since
     * the calendar behind the sums tells whole days.
     *
     * @param had warmth that the cells had before the start
     * @return days from the start; the early bound is 0 when the milestone may lie before it
     */
    public Span span(Milestone milestone, Warming warming, TwoSums had) {
        TwoSums wanting = settings.sumsOf(milestone).less(had);
        double low = warming.daysTo(settings, settings.lowBaseC(), wanting.lowBase());
        double high = warming.daysTo(settings, settings.highBaseC(), wanting.highBase());
        double half = settings.calendarHalfDays();
        return new Span(Math.max(0, Math.min(low, high) - half), Math.max(low, high) + half);
    }

    /**
     * When parasitoids have to be watched for: from the earliest day they come out to two days before the first male at its
     * latest.
     */
    public Span parasitoidWatch(Warming warming, TwoSums had) {
        double from = span(Milestone.PARASITOIDS, warming, had).earlyDays();
        double male = span(Milestone.FIRST_MALE, warming, had).lateDays();
        return new Span(from, Math.max(from, male - settings.watchEndDays()));
    }

    /**
     * Warmth that cells have had when their first males are still so many days away at one temperature.
     *
     * @param days days to the first males, 0 or more
     * @param celsius temperature for which that was said, °C
     */
    public TwoSums hadWhenFlightIsIn(double days, double celsius) {
        return settings.sumsOf(Milestone.FIRST_MALE).less(settings.gathered(celsius, days));
    }
}
