package org.nestyear.core.weather;

import java.time.LocalDate;
import java.time.Month;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.nestyear.core.stats.Draws;

/**
 * Daily highest and lowest temperature: yearly curves of mean and spread, and deviations from them that follow each other
 * from day to day and hang together (Richardson 1981, Matalas 1967), in each month as they did in the record.
 */
final class TemperatureProcess {
    private final boolean wetMatters;
    private final TemperatureCurve high;
    private final TemperatureCurve low;
    private final List<DayToDay> steps;

    private TemperatureProcess(boolean wetMatters, TemperatureCurve high, TemperatureCurve low, List<DayToDay> steps) {
        this.wetMatters = wetMatters;
        this.high = high;
        this.low = low;
        this.steps = List.copyOf(steps);
    }

    /**
     * Fits the process.
     *
     * @param wetMatters whether wet days are different; days are then left out where their own rain or that of the day
     *     before was not measured
     */
    static TemperatureProcess fit(WeatherRecord record, boolean wetMatters) {
        List<DailyWeather> days = new ArrayList<>();
        List<double[]> terms = new ArrayList<>();
        for (DailyWeather day : record.days()) {
            double[] own = day.hasTemperatures() ? terms(record, day, wetMatters) : null;
            if (own != null) {
                days.add(day);
                terms.add(own);
            }
        }
        TemperatureCurve high = TemperatureCurve.fit(
                terms, days.stream().mapToDouble(DailyWeather::maxC).toArray());
        TemperatureCurve low = TemperatureCurve.fit(
                terms, days.stream().mapToDouble(DailyWeather::minC).toArray());
        List<List<double[][]>> pairs = new ArrayList<>();
        for (int month = 0; month < Month.values().length; month++) {
            pairs.add(new ArrayList<>());
        }
        for (int i = 1; i < days.size(); i++) {
            LocalDate date = days.get(i).date();
            if (days.get(i - 1).date().plusDays(1).equals(date)) {
                pairs.get(date.getMonthValue() - 1).add(new double[][] {
                    deviation(high, low, days.get(i), terms.get(i)),
                    deviation(high, low, days.get(i - 1), terms.get(i - 1))
                });
            }
        }
        return new TemperatureProcess(wetMatters, high, low, DayToDay.byMonth(pairs));
    }

    private static double @Nullable [] terms(WeatherRecord record, DailyWeather day, boolean wetMatters) {
        if (!wetMatters) {
            return TemperatureCurve.terms(day.date(), false, false, false);
        }
        Optional<DailyWeather> before = record.find(day.date().minusDays(1));
        if (before.isEmpty() || Double.isNaN(before.get().rainMm()) || Double.isNaN(day.rainMm())) {
            return null;
        }
        return TemperatureCurve.terms(
                day.date(),
                true,
                RainChain.isWet(day.rainMm()),
                RainChain.isWet(before.get().rainMm()));
    }

    private static double[] deviation(TemperatureCurve high, TemperatureCurve low, DailyWeather day, double[] terms) {
        return new double[] {high.deviation(day.maxC(), terms), low.deviation(day.minC(), terms)};
    }

    /** Deviation of a measured day; the day before is taken to have been as wet or dry as it. */
    double[] deviation(DailyWeather day) {
        boolean wet = wetMatters && RainChain.isWet(day.rainMm());
        return deviation(high, low, day, TemperatureCurve.terms(day.date(), wetMatters, wet, wet));
    }

    /** The deviation of a day from that of the day before. */
    double[] next(LocalDate date, double[] before, Draws draws) {
        return steps.get(date.getMonthValue() - 1).from(before, draws.normal(), draws.normal());
    }

    /** The day with such a deviation; where highest and lowest would cross they change places. */
    DailyWeather day(LocalDate date, boolean wet, boolean wetBefore, double rainMm, double[] deviation) {
        double[] terms = TemperatureCurve.terms(date, wetMatters, wet, wetBefore);
        double highC = high.valueC(deviation[0], terms);
        double lowC = low.valueC(deviation[1], terms);
        return new DailyWeather(date, Math.min(lowC, highC), Math.max(lowC, highC), rainMm, Double.NaN, Double.NaN);
    }
}
