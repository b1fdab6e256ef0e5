package org.nestyear.core.weather;

import java.time.LocalDate;
import java.time.Month;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.nestyear.core.stats.Draws;

/**
 * Invents weather that is like a station's own: the generator of Richardson (1981), Water Resources Research 17:182. Wet
 * and dry days are a chain with two states by month, rain on wet days is gamma, and temperatures deviate from yearly
 * curves, one for wet and one for dry days, with the day-to-day and mutual correlation of the record.
 *
 * <p>It enlarges an ensemble of few years. It keeps the mean, the spread of single days, the share of wet days and the
 * correlation from day to day. Whole seasons differ a little less from each other than real ones, and what the few years
 * never showed it cannot know: invented years are never to be counted among the real ones.
 *
 * <p>Immutable; may be called from many threads. The same seed gives the same days.
 */
public final class WeatherGenerator {
    /** A numerical choice: with fewer days in any month nothing is fitted. */
    private static final int FEWEST_DAYS_IN_MONTH = 20;
    /** A numerical choice: days drawn and thrown away before the first, so that its start is forgotten. */
    private static final int DAYS_OF_RUN_UP = 60;

    private final @Nullable RainChain rain;
    private final TemperatureProcess temperatures;

    private WeatherGenerator(@Nullable RainChain rain, TemperatureProcess temperatures) {
        this.rain = rain;
        this.temperatures = temperatures;
    }

    /** True when a record has enough days in every month. */
    public static boolean canFit(WeatherRecord record) {
        Map<Month, Integer> days = new EnumMap<>(Month.class);
        for (DailyWeather day : record.days()) {
            if (day.hasTemperatures()) {
                days.merge(day.date().getMonth(), 1, Integer::sum);
            }
        }
        return days.size() == Month.values().length
                && days.values().stream().allMatch(count -> count >= FEWEST_DAYS_IN_MONTH);
    }

    /**
     * Fits a generator to a record. Where rain was measured on less than half of the days, or next to never fell, the
     * generator makes temperatures only.
     *
     * @throws IllegalArgumentException if a month has too few days with temperatures
     */
    public static WeatherGenerator fit(WeatherRecord record) {
        if (!canFit(record)) {
            throw new IllegalArgumentException("the weather record lacks days in some month: at least "
                    + FEWEST_DAYS_IN_MONTH + " of every month are needed to invent weather like it");
        }
        Optional<RainChain> rain = RainChain.fit(record);
        return new WeatherGenerator(rain.orElse(null), TemperatureProcess.fit(record, rain.isPresent()));
    }

    /** True when it also makes rain; otherwise rain is NaN on every day. */
    public boolean makesRain() {
        return rain != null;
    }

    /**
     * Invented days; {@link WeatherRecord#find} of the result serves {@code SeasonWeather.assemble}.
     *
     * @param from first day
     * @param to last day, not before the first
     * @param seed number of the draw
     */
    public WeatherRecord generate(LocalDate from, LocalDate to, long seed) {
        return run(from.minusDays(DAYS_OF_RUN_UP), from, to, false, new double[2], new Draws(seed));
    }

    /**
     * Invented days that go on from a measured one, so that a warm or wet spell does not end at once.
     *
     * @param last the last measured day, with both temperatures
     * @param to last day wanted, after that
     * @param seed number of the draw
     */
    public WeatherRecord continuing(DailyWeather last, LocalDate to, long seed) {
        if (!last.hasTemperatures()) {
            throw new IllegalArgumentException("there are no temperatures on " + last.date() + " to go on from");
        }
        LocalDate from = last.date().plusDays(1);
        return run(from, from, to, RainChain.isWet(last.rainMm()), temperatures.deviation(last), new Draws(seed));
    }

    private WeatherRecord run(
            LocalDate start, LocalDate from, LocalDate to, boolean wetBefore, double[] deviation, Draws draws) {
        List<DailyWeather> days = new ArrayList<>();
        boolean wet = wetBefore;
        double[] now = deviation;
        for (LocalDate date = start; !date.isAfter(to); date = date.plusDays(1)) {
            double rainMm = Double.NaN;
            boolean wetYesterday = wet;
            if (rain != null) {
                wet = rain.drawWet(date, wet, draws);
                rainMm = wet ? rain.drawRainMm(date, draws) : 0;
            }
            now = temperatures.next(date, now, draws);
            if (!date.isBefore(from)) {
                days.add(temperatures.day(date, wet, wetYesterday, rainMm, now));
            }
        }
        return new WeatherRecord(days);
    }
}
