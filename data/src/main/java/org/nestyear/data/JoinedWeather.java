package org.nestyear.data;

import java.nio.file.InvalidPathException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.nestyear.core.weather.DailyWeather;
import org.nestyear.core.weather.WeatherRecord;
import org.tomlj.TomlArray;

/** The weather files a season names, joined into one record, and its forecast. */
record JoinedWeather(
        WeatherRecord record,
        List<WeatherFile> files,
        @Nullable WeatherRecord forecast,
        @Nullable WeatherFile forecastFile) {
    /**
     * Reads them.
     *
     * @throws DataFault the first thing wrong with the table or with one of the files
     */
    static JoinedWeather read(SeasonTable table, TextSource season, LocalDate today) {
        TomlArray names = table.list("files", "a list of weather files, each in quotation marks");
        if (names.isEmpty()) {
            throw new DataFault(
                    FaultCode.SEASON_MISSING,
                    table.valuePosition("files"),
                    "the list of weather files is empty",
                    "at least one file",
                    "");
        }
        List<WeatherFile> files = new ArrayList<>();
        for (int i = 0; i < names.size(); i++) {
            Position at = table.elementPosition(names, i);
            if (!(names.get(i) instanceof String name)) {
                throw new DataFault(
                        FaultCode.SEASON_TYPE,
                        at,
                        "weather file " + (i + 1) + " is " + SeasonTable.described(names.get(i)),
                        "a file name in quotation marks",
                        "");
            }
            files.add(WeatherFiles.read(beside(season, name, at)));
        }
        files.sort(Comparator.comparing(file -> file.record().first()));
        WeatherRecord record = join(files);
        if (record.first().isAfter(today)) {
            throw new DataFault(
                    FaultCode.WEATHER_SPAN,
                    table.valuePosition("files"),
                    "the weather begins on " + record.first() + ", after the day of the plan, " + today,
                    "weather up to the day of the plan",
                    "\"today\" under [aim] is wrong");
        }
        WeatherFile forecast = table.has("forecast") ? forecast(table, season, today) : null;
        return new JoinedWeather(
                record, List.copyOf(files), forecast == null ? null : after(forecast.record(), today), forecast);
    }

    private static TextSource beside(TextSource season, String name, Position at) {
        TextSource file;
        try {
            file = season.beside(name);
        } catch (InvalidPathException e) {
            throw new DataFault(FaultCode.SEASON_WORD, at, "\"" + name + "\" cannot be a file name", "a path", "");
        }
        if (!file.exists()) {
            throw new DataFault(
                    FaultCode.FILE_MISSING,
                    at,
                    "there is no file \"" + file.name() + "\"",
                    "a path that starts from the folder of the season file",
                    "");
        }
        return file;
    }

    private static WeatherRecord join(List<WeatherFile> files) {
        Map<LocalDate, WeatherFile> seen = new HashMap<>();
        List<DailyWeather> days = new ArrayList<>();
        for (WeatherFile file : files) {
            for (DailyWeather day : file.record().days()) {
                WeatherFile other = seen.putIfAbsent(day.date(), file);
                if (other != null) {
                    throw new DataFault(
                            FaultCode.WEATHER_OVERLAP,
                            file.position(day.date()),
                            day.date() + " also stands in " + other.position(day.date()),
                            "each day in one weather file",
                            "");
                }
                days.add(day);
            }
        }
        return new WeatherRecord(days);
    }

    private static WeatherFile forecast(SeasonTable table, TextSource season, LocalDate today) {
        Position at = table.valuePosition("forecast");
        String name = table.text("forecast");
        if (name.toLowerCase(Locale.ROOT).endsWith(".json")) {
            throw new DataFault(
                    FaultCode.SEASON_NOT_YET,
                    at,
                    "a forecast in JSON is not read yet",
                    "a CSV file with the columns date,tmin_c,tmax_c,rain_mm",
                    "");
        }
        WeatherFile forecast = WeatherFiles.read(beside(season, name, at));
        if (!forecast.record().last().isAfter(today)) {
            throw new DataFault(
                    FaultCode.WEATHER_SPAN,
                    at,
                    "the forecast ends on " + forecast.record().last() + ", not after the day of the plan, " + today,
                    "days after the day of the plan",
                    "it is an old forecast: leave the line out or fetch a new one");
        }
        return forecast;
    }

    /** What the station has measured since counts for more than what was forecast. */
    private static WeatherRecord after(WeatherRecord forecast, LocalDate today) {
        return new WeatherRecord(forecast.days().stream()
                .filter(day -> day.date().isAfter(today))
                .toList());
    }
}
