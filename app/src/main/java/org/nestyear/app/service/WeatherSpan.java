package org.nestyear.app.service;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.nestyear.core.weather.DailyWeather;
import org.nestyear.core.weather.Filling;
import org.nestyear.core.weather.HourlyTemperatures;
import org.nestyear.core.weather.WeatherRecord;

/**
 * A run of days out of a station's table, its gaps filled.
 *
 * @param days the days in order, at least one
 * @param filledDays how many of them were filled
 */
record WeatherSpan(List<DailyWeather> days, long filledDays) {
    WeatherSpan {
        days = List.copyOf(days);
    }

    /**
     * Reads the days {@code from} to {@code to}, which the table must hold.
     *
     * @throws Refusal if the file is wrong, does not hold the days, or has a gap that cannot be filled
     */
    static WeatherSpan read(Path file, LocalDate from, LocalDate to) {
        StationWeather station = StationWeather.read(file);
        require(station, from, to, "the days asked for, " + from + " to " + to);
        return of(station, from, to);
    }

    /**
     * Reads the days from the one on which bees are put out, which the table must hold, to {@code to} or its last,
     * whichever comes first.
     *
     * @throws Refusal if the file is wrong, does not hold the day, or has a gap that cannot be filled
     */
    static WeatherSpan from(Path file, LocalDate out, LocalDate to) {
        StationWeather station = StationWeather.read(file);
        require(station, out, out, "the day they are put out, " + out);
        return of(station, out, to);
    }

    private static void require(StationWeather station, LocalDate from, LocalDate to, String expected) {
        WeatherRecord record = station.measured();
        if (from.isBefore(record.first()) || to.isAfter(record.last())) {
            throw new Refusal(
                    Refusal.Kind.BAD_INPUT,
                    "NY-WEATHER-SPAN",
                    station.name(),
                    "the weather runs from " + record.first() + " to " + record.last() + "; expected it to hold "
                            + expected + ".",
                    "");
        }
    }

    private static WeatherSpan of(StationWeather station, LocalDate from, LocalDate to) {
        List<DailyWeather> days = station.filled().weather().days().stream()
                .filter(day -> !day.date().isBefore(from) && !day.date().isAfter(to))
                .toList();
        long filled = 0;
        for (Filling filling : station.filled().fillings()) {
            LocalDate date = filling.gap().from();
            for (; !date.isAfter(filling.gap().to()); date = date.plusDays(1)) {
                filled += !date.isBefore(from) && !date.isAfter(to) ? 1 : 0;
            }
        }
        return new WeatherSpan(days, filled);
    }

    /** Air temperatures by the hour, °C, 24 a day. */
    double[] hoursC(double latitudeDeg) {
        return HourlyTemperatures.fromDailyRange(
                days.get(0).date(),
                days.stream().mapToDouble(DailyWeather::minC).toArray(),
                days.stream().mapToDouble(DailyWeather::maxC).toArray(),
                latitudeDeg);
    }

    LocalDate last() {
        return days.get(days.size() - 1).date();
    }
}
