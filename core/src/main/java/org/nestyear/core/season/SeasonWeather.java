package org.nestyear.core.season;

import java.time.LocalDate;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;
import java.util.function.Function;
import org.nestyear.core.weather.DailyWeather;

/**
 * The complete daily weather of one season: one member of an ensemble. Array index 0 is the first day held.
 * Temperatures in °C, rain in mm (NaN where not measured). The arrays are shared, never changed.
 */
public final class SeasonWeather {
    private final SeasonFrame frame;
    private final int sourceYear;
    private final int firstIndex;
    private final double[] minC;
    private final double[] maxC;
    private final double[] rainMm;
    private final double[] leadMinC;
    private final double[] leadMaxC;

    private SeasonWeather(
            SeasonFrame frame,
            int sourceYear,
            int firstIndex,
            double[] minC,
            double[] maxC,
            double[] rainMm,
            Deque<DailyWeather> lead) {
        this.frame = frame;
        this.sourceYear = sourceYear;
        this.firstIndex = firstIndex;
        this.minC = minC;
        this.maxC = maxC;
        this.rainMm = rainMm;
        this.leadMinC = lead.stream().mapToDouble(DailyWeather::minC).toArray();
        this.leadMaxC = lead.stream().mapToDouble(DailyWeather::maxC).toArray();
    }

    /**
     * Puts a season together day by day. Days before the first one wanted are kept apart as its lead, as far back as they
     * are known without a gap: chill is counted from autumn on, while the bees are looked at only later.
     *
     * @param from first day wanted; the season runs from there to its end
     * @param dayOf gives the weather of a date of the season, if known
     * @return the season, or empty when a day has no temperatures
     */
    public static Optional<SeasonWeather> assemble(
            SeasonFrame frame, int sourceYear, LocalDate from, Function<LocalDate, Optional<DailyWeather>> dayOf) {
        int first = frame.index(from);
        int n = frame.days() - first;
        double[] min = new double[n];
        double[] max = new double[n];
        double[] rain = new double[n];
        for (int i = 0; i < n; i++) {
            Optional<DailyWeather> day = dayOf.apply(frame.date(first + i));
            if (day.isEmpty() || !day.get().hasTemperatures()) {
                return Optional.empty();
            }
            min[i] = day.get().minC();
            max[i] = day.get().maxC();
            rain[i] = day.get().rainMm();
        }
        return Optional.of(new SeasonWeather(frame, sourceYear, first, min, max, rain, lead(frame, first, dayOf)));
    }

    private static Deque<DailyWeather> lead(
            SeasonFrame frame, int first, Function<LocalDate, Optional<DailyWeather>> dayOf) {
        Deque<DailyWeather> lead = new ArrayDeque<>();
        for (int i = first - 1; i >= 0; i--) {
            Optional<DailyWeather> day = dayOf.apply(frame.date(i));
            if (day.isEmpty() || !day.get().hasTemperatures()) {
                break;
            }
            lead.addFirst(day.get());
        }
        return lead;
    }

    /** Days held. */
    public int days() {
        return minC.length;
    }

    /** The date of array index {@code i}. */
    public LocalDate date(int i) {
        return frame.date(firstIndex + i);
    }

    /** The array index of a date, which may lie outside the array. */
    public int index(LocalDate date) {
        return frame.index(date) - firstIndex;
    }

    /** The season. */
    public SeasonFrame frame() {
        return frame;
    }

    /** The year whose weather continues the season after the known days. */
    public int sourceYear() {
        return sourceYear;
    }

    /** Daily minimum, °C. */
    public double[] minC() {
        return minC;
    }

    /** Daily maximum, °C. */
    public double[] maxC() {
        return maxC;
    }

    /** Middle of the lowest and the highest of each day, °C; a new array. */
    public double[] meanC() {
        double[] mean = new double[minC.length];
        for (int d = 0; d < mean.length; d++) {
            mean[d] = (minC[d] + maxC[d]) / 2;
        }
        return mean;
    }

    /** Daily rain, mm; NaN where not measured. */
    public double[] rainMm() {
        return rainMm;
    }

    /** Daily minimum of the unbroken days before the first one held, °C; at most back to the season's beginning. */
    public double[] leadMinC() {
        return leadMinC;
    }

    /** Daily maximum of the same days, °C. */
    public double[] leadMaxC() {
        return leadMaxC;
    }
}
