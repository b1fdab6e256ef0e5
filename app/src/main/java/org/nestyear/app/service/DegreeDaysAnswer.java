package org.nestyear.app.service;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.nestyear.core.weather.DailyWeather;
import org.nestyear.core.weather.DegreeDays;

/**
 * A sum of warmth.
 *
 * @param degreeDays by a sine through each day, °C·d
 * @param ofMeans by the mean of each day's extremes, °C·d, without a cap: the sum done by hand
 * @param days days summed
 * @param filledDays how many of them were missing and filled
 */
public record DegreeDaysAnswer(
        DegreeDaysQuestion question, double degreeDays, double ofMeans, int days, long filledDays, String fingerprint) {
    /**
     * Sums up.
     *
     * @throws Refusal if the table is wrong or does not hold the days
     */
    public static DegreeDaysAnswer of(DegreeDaysQuestion question) {
        WeatherSpan span = span(question.over());
        Fingerprint print = new Fingerprint("");
        print.add(question.baseC());
        print.add(String.valueOf(question.capC()));
        double sum = 0;
        double means = 0;
        for (DailyWeather day : span.days()) {
            print.add(day.minC());
            print.add(day.maxC());
            sum += oneDay(day, question.baseC(), question.capC());
            means += DegreeDays.ofMean(day.minC(), day.maxC(), question.baseC());
        }
        return new DegreeDaysAnswer(question, sum, means, span.days().size(), span.filledDays(), print.digits());
    }

    private static double oneDay(DailyWeather day, double baseC, @Nullable Double capC) {
        return capC == null
                ? DegreeDays.sine(day.minC(), day.maxC(), baseC)
                : DegreeDays.sine(day.minC(), day.maxC(), baseC, capC);
    }

    private static WeatherSpan span(DegreeDaysQuestion.Over over) {
        if (over instanceof DegreeDaysQuestion.Table table) {
            return WeatherSpan.read(table.file(), table.from(), table.to());
        }
        DegreeDaysQuestion.OneDay day = (DegreeDaysQuestion.OneDay) over;
        double none = Double.NaN;
        return new WeatherSpan(List.of(new DailyWeather(LocalDate.EPOCH, day.minC(), day.maxC(), none, none, none)), 0);
    }
}
