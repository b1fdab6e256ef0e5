package org.nestyear.app.service;

import java.time.LocalDate;
import java.util.List;
import org.nestyear.core.weather.DailyWeather;
import org.nestyear.core.weather.FilledWeather;
import org.nestyear.core.weather.Filling;
import org.nestyear.core.weather.HourlyTemperatures;
import org.nestyear.core.weather.WeatherRecord;

/** Hourly temperatures of a station from the day cocoons are put out. */
final class OutdoorHours {
    /** Days of weather after putting out that are read at most; numerical. */
    private static final int LONGEST_SEASON_DAYS = 200;

    private final double[] celsius;
    private final LocalDate lastDay;
    private final long filledDays;

    private OutdoorHours(double[] celsius, LocalDate lastDay, long filledDays) {
        this.celsius = celsius;
        this.lastDay = lastDay;
        this.filledDays = filledDays;
    }

    /**
     * Reads them.
     *
     * @throws Refusal if the file is wrong, does not hold the day, or has a gap that cannot be filled
     */
    static OutdoorHours read(EmergeQuestion.Weather weather) {
        StationWeather station = StationWeather.read(weather.file());
        WeatherRecord record = station.measured();
        if (weather.out().isBefore(record.first()) || weather.out().isAfter(record.last())) {
            throw new Refusal(
                    Refusal.Kind.BAD_INPUT,
                    "NY-WEATHER-SPAN",
                    station.name(),
                    "the weather runs from " + record.first() + " to " + record.last()
                            + "; expected it to hold the day they are put out, " + weather.out() + ".",
                    "");
        }
        FilledWeather filled = station.filled();
        LocalDate end = weather.out().plusDays(LONGEST_SEASON_DAYS);
        List<DailyWeather> days = filled.weather().days().stream()
                .filter(day -> !day.date().isBefore(weather.out()) && day.date().isBefore(end))
                .toList();
        double[] celsius = HourlyTemperatures.fromDailyRange(
                weather.out(),
                days.stream().mapToDouble(DailyWeather::minC).toArray(),
                days.stream().mapToDouble(DailyWeather::maxC).toArray(),
                weather.latitudeDeg());
        return new OutdoorHours(celsius, days.get(days.size() - 1).date(), filledDays(filled, weather.out(), end));
    }

    private static long filledDays(FilledWeather filled, LocalDate from, LocalDate end) {
        long days = 0;
        for (Filling filling : filled.fillings()) {
            LocalDate date = filling.gap().from();
            for (; !date.isAfter(filling.gap().to()); date = date.plusDays(1)) {
                days += !date.isBefore(from) && date.isBefore(end) ? 1 : 0;
            }
        }
        return days;
    }

    /** Air temperatures, °C, 24 a day. */
    double[] celsius() {
        return celsius.clone();
    }

    LocalDate lastDay() {
        return lastDay;
    }

    /** Days among them whose temperatures were filled. */
    long filledDays() {
        return filledDays;
    }
}
