package org.nestyear.app.service;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.nestyear.core.weather.DailyWeather;
import org.nestyear.core.weather.HourlyTemperatures;
import org.nestyear.core.weather.WeatherRecord;

/**
 * Hourly temperatures of the summers of a record from a day on: the days of that summer as far as the record holds them, each
 * time followed by those of a past year; only that summer itself where the record holds it whole.
 */
final class WarmSummers {
    private final List<double[]> hours;
    private final long ownDays;

    private WarmSummers(List<double[]> hours, long ownDays) {
        this.hours = hours;
        this.ownDays = ownDays;
    }

    /**
     * Reads them.
     *
     * @param end last day wanted
     * @param excessC how much warmer the cells are than the air, °C
     * @throws Refusal if the file is wrong or no year of it covers these days
     */
    static WarmSummers read(WarmQuestion.Outdoors outdoors, LocalDate end, double excessC) {
        StationWeather station = StationWeather.read(outdoors.file());
        WeatherRecord weather = station.filled().weather();
        LocalDate out = outdoors.out();
        int days = (int) ChronoUnit.DAYS.between(out, end) + 1;
        long own = Math.max(0, Math.min(days, ChronoUnit.DAYS.between(out, weather.last()) + 1));
        own = out.isBefore(weather.first()) ? 0 : own;
        SortedMap<Integer, double[]> byYear = new TreeMap<>();
        for (int year = weather.first().getYear(); year <= weather.last().getYear(); year++) {
            double[] member = member(weather, outdoors, year, days, own, excessC);
            if (member != null) {
                byYear.put(year, member);
            }
        }
        if (byYear.isEmpty()) {
            throw new Refusal(
                    Refusal.Kind.NO_ANSWER,
                    "NY-WARM-NO-YEARS",
                    station.name(),
                    "No year of this weather covers the days from " + monthDay(out) + " to " + monthDay(end)
                            + ", so nothing can be said of a summer outdoors.",
                    "");
        }
        List<double[]> hours = own == days ? List.of(byYear.get(byYear.firstKey())) : List.copyOf(byYear.values());
        return new WarmSummers(hours, own);
    }

    private static double @Nullable [] member(
            WeatherRecord weather, WarmQuestion.Outdoors outdoors, int year, int days, long own, double excessC) {
        LocalDate then = outdoors.out().withYear(year);
        double[] low = new double[days];
        double[] high = new double[days];
        for (int d = 0; d < days; d++) {
            LocalDate date = d < own ? outdoors.out().plusDays(d) : then.plusDays(d);
            DailyWeather day = weather.find(date).orElse(null);
            if (day == null) {
                return null;
            }
            low[d] = day.minC() + excessC;
            high[d] = day.maxC() + excessC;
        }
        return HourlyTemperatures.fromDailyRange(outdoors.out(), low, high, outdoors.latitudeDeg());
    }

    private static String monthDay(LocalDate date) {
        return date.toString().substring("2015-".length());
    }

    /** One run of hours for each summer, °C. */
    List<double[]> hours() {
        List<double[]> copies = new ArrayList<>();
        hours.forEach(run -> copies.add(run.clone()));
        return copies;
    }

    /** Days of the summer asked for that the record holds. */
    long ownDays() {
        return ownDays;
    }
}
