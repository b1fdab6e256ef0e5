package org.nestyear.app.service;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.Year;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.nestyear.core.season.Batch;
import org.nestyear.core.species.Catalogue;
import org.nestyear.core.weather.DailyWeather;
import org.nestyear.core.weather.WeatherRecord;
import org.nestyear.data.DataFault;
import org.nestyear.data.DayOfPlan;
import org.nestyear.data.FaultCode;
import org.nestyear.data.Season;
import org.nestyear.data.SeasonCheck;
import org.nestyear.data.SeasonFile;
import org.nestyear.data.TextSource;
import org.nestyear.data.WeatherCheck;
import org.nestyear.data.WeatherFile;
import org.nestyear.data.WeatherFiles;

/** Looks a weather or season file over without planning anything. */
public final class FileCheck {
    private final Catalogue catalogue;

    public FileCheck(Catalogue catalogue) {
        this.catalogue = catalogue;
    }

    /**
     * Looks a file over: a season when its name ends in {@code .toml}, else a weather table.
     *
     * @param clock the day it is, for a season that does not name one
     * @throws Refusal if there is no such file
     */
    public FileReport check(Path file, LocalDate clock) {
        TextSource source = TextSource.ofFile(file);
        return source.name().toLowerCase(Locale.ROOT).endsWith(".toml") ? season(source, clock) : weather(source);
    }

    private FileReport season(TextSource source, LocalDate clock) {
        SeasonCheck check = SeasonFile.check(source, DayOfPlan.of(clock));
        refuseMissing(source, check.faults());
        Season season = check.season();
        List<DataFault> faults = new ArrayList<>(check.faults());
        if (season == null) {
            return new FileReport(source.name(), "season", null, null, refusals(faults), 0);
        }
        List<Batch> batches = season.inputs().batches();
        for (int i = 0; i < batches.size(); i++) {
            if (catalogue.find(batches.get(i).species()).isEmpty()) {
                faults.add(season.unknownSpecies(i, catalogue.names()));
            }
        }
        Set<String> columns = new LinkedHashSet<>();
        Set<String> ignored = new LinkedHashSet<>();
        List<String> notes = new ArrayList<>();
        for (WeatherFile file : season.weather()) {
            columns.addAll(file.columns());
            ignored.addAll(file.ignored());
            file.notes().forEach(note -> notes.add(file.name() + ": " + note));
        }
        return new FileReport(
                source.name(),
                "season",
                days(season.inputs().weather(), List.copyOf(columns), List.copyOf(ignored), notes),
                season.inputs(),
                refusals(faults),
                0);
    }

    private static FileReport weather(TextSource source) {
        WeatherCheck check = WeatherFiles.check(source);
        refuseMissing(source, check.faults());
        WeatherFile file = check.file();
        return new FileReport(
                source.name(),
                "weather",
                file == null ? null : days(file.record(), file.columns(), file.ignored(), file.notes()),
                null,
                refusals(check.faults()),
                check.moreFaults());
    }

    private static void refuseMissing(TextSource source, List<DataFault> faults) {
        for (DataFault fault : faults) {
            if (fault.code() == FaultCode.FILE_MISSING
                    && fault.at().file().equals(source.name())
                    && fault.at().line() == 0) {
                throw Refusal.of(fault);
            }
        }
    }

    private static FileReport.Days days(
            WeatherRecord record, List<String> columns, List<String> ignored, List<String> notes) {
        Set<Integer> years = new TreeSet<>();
        int measured = 0;
        for (DailyWeather day : record.days()) {
            if (day.hasTemperatures()) {
                measured++;
                years.add(day.date().getYear());
            }
        }
        List<Integer> complete =
                years.stream().filter(year -> isComplete(record, year)).toList();
        return new FileReport.Days(
                record.first(), record.last(), measured, complete, record.gaps(), columns, ignored, notes);
    }

    private static boolean isComplete(WeatherRecord record, int year) {
        for (int day = 1; day <= Year.of(year).length(); day++) {
            @Nullable
            DailyWeather weather = record.find(LocalDate.ofYearDay(year, day)).orElse(null);
            if (weather == null || !weather.hasTemperatures()) {
                return false;
            }
        }
        return true;
    }

    private static List<Refusal> refusals(List<DataFault> faults) {
        return faults.stream().map(Refusal::of).toList();
    }
}
