package org.nestyear.checks.weather;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.nestyear.core.weather.DailyWeather;
import org.nestyear.core.weather.WeatherRecord;

/**
 * Statistics of one quantity in one calendar month over all years of a record.
 *
 * @param days how many values
 * @param mean their mean
 * @param sd their standard deviation
 * @param lag correlation of a day with the day before, both in the month
 * @param meanError standard error of the mean, with the days hanging together as much as {@code lag} says
 * @param sdError standard error of the standard deviation, likewise
 */
record MonthStatistics(int days, double mean, double sd, double lag, double meanError, double sdError) {
    static MonthStatistics of(WeatherRecord record, int month, ToDoubleFunction<DailyWeather> quantity) {
        List<Double> values = new ArrayList<>();
        List<double[]> pairs = new ArrayList<>();
        for (DailyWeather day : record.days()) {
            double value = quantity.applyAsDouble(day);
            if (day.date().getMonthValue() != month || Double.isNaN(value)) {
                continue;
            }
            values.add(value);
            if (day.date().getDayOfMonth() > 1) {
                record.find(day.date().minusDays(1))
                        .map(quantity::applyAsDouble)
                        .filter(before -> !Double.isNaN(before))
                        .ifPresent(before -> pairs.add(new double[] {before, value}));
            }
        }
        int n = values.size();
        double mean = values.stream().mapToDouble(Double::doubleValue).average().orElse(Double.NaN);
        double variance =
                values.stream().mapToDouble(v -> (v - mean) * (v - mean)).sum() / (n - 1);
        double lag =
                pairs.stream().mapToDouble(p -> (p[0] - mean) * (p[1] - mean)).sum() / pairs.size() / variance;
        double sd = Math.sqrt(variance);
        return new MonthStatistics(
                n,
                mean,
                sd,
                lag,
                sd * Math.sqrt((1 + lag) / (1 - lag) / n),
                sd * Math.sqrt((1 + lag * lag) / (1 - lag * lag) / (2 * n)));
    }

    /** Standard error of the correlation. */
    double lagError() {
        return (1 - lag * lag) / Math.sqrt(days);
    }
}
