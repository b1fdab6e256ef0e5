package org.nestyear.data;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import org.nestyear.core.weather.DailyWeather;
import org.nestyear.core.weather.WeatherRecord;

/**
 * Reads a table of daily weather: our own format {@code date,tmin_c,tmax_c,rain_mm[,wind_m_s,radiation_mj_m2]}, or one
 * with the usual other headings; a unit in a heading ({@code tmin_f}, {@code temp_max (°F)}, {@code rain_in}) is
 * converted. Cells are parted by commas, semicolons or tabs; with the last two a decimal comma is understood. Days may
 * be missing, and stay missing; they must be in order and stand there once. Empty cells and the marks NA, NaN, null, M,
 * - and -9999 mean "not measured"; T in a rain column means a trace and counts as 0 mm.
 */
public final class WeatherCsv {
    private final SourceText source;
    private final char separator;
    private final List<DataFault> faults = new ArrayList<>();
    private final List<DailyWeather> days = new ArrayList<>();
    private final Map<LocalDate, Integer> lines = new HashMap<>();
    private int moreFaults;
    private int lastLine;

    private WeatherCsv(SourceText source) {
        this.source = source;
        this.separator = CsvColumns.separator(source);
    }

    /**
     * Reads a table without a fault.
     *
     * @throws DataFault the first thing that is wrong with it
     */
    public static WeatherFile read(TextSource source) {
        WeatherCheck check = check(source);
        if (!check.faults().isEmpty()) {
            throw check.faults().get(0);
        }
        WeatherFile file = check.file();
        if (file == null) {
            throw new IllegalStateException("a table without a fault must hold a day");
        }
        return file;
    }

    /** Reads a table to its end and lists everything that is wrong with it. */
    public static WeatherCheck check(TextSource source) {
        WeatherCsv csv;
        try {
            csv = new WeatherCsv(SourceText.read(source));
        } catch (DataFault fault) {
            return new WeatherCheck(null, List.of(fault), 0);
        }
        return csv.readAll();
    }

    private WeatherCheck readAll() {
        try (CsvReader<CsvRecord> reader = CsvColumns.reader(source, separator)) {
            return read(reader.iterator());
        } catch (DataFault fault) {
            return refused(fault);
        } catch (CsvParseException e) {
            return refused(new DataFault(
                    FaultCode.WEATHER_SYNTAX,
                    new Position(source.name(), lastLine + 1, 1),
                    "a quotation mark is opened and not closed again",
                    "cells in pairs of quotation marks, or without any",
                    ""));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private WeatherCheck read(Iterator<CsvRecord> rows) {
        if (!rows.hasNext()) {
            return refused(empty());
        }
        CsvRecord first = next(rows);
        int headerLine = lastLine;
        WeatherHeader header = WeatherHeader.of(first.getFields(), cell -> at(headerLine, cell));
        WeatherRow row = new WeatherRow(source, separator, header);
        while (rows.hasNext()) {
            take(row, next(rows));
        }
        DataFault scale = WeatherScale.check(
                row.lows(),
                row.highs(),
                header.unit(WeatherColumn.MAX),
                at(headerLine, header.cell(WeatherColumn.MAX)));
        if (scale != null) {
            return refused(scale);
        }
        if (days.isEmpty() && faults.isEmpty()) {
            return refused(empty());
        }
        return result(header);
    }

    private CsvRecord next(Iterator<CsvRecord> rows) {
        CsvRecord next = rows.next();
        lastLine = (int) next.getStartingLineNumber();
        return next;
    }

    private WeatherCheck result(WeatherHeader header) {
        if (days.isEmpty()) {
            return new WeatherCheck(null, faults, moreFaults);
        }
        List<String> columns = new ArrayList<>();
        for (WeatherColumn column : header.columns()) {
            boolean hasUnit = !WeatherUnit.of(column).isEmpty();
            columns.add(column.ownName() + (hasUnit ? " (" + header.unit(column).symbol() + ")" : ""));
        }
        return new WeatherCheck(
                new WeatherFile(source.name(), new WeatherRecord(days), columns, header.ignored(), lines),
                faults,
                moreFaults);
    }

    private void take(WeatherRow row, CsvRecord csv) {
        try {
            DailyWeather day = row.read(csv);
            if (lines.putIfAbsent(day.date(), (int) csv.getStartingLineNumber()) == null) {
                days.add(day);
            }
        } catch (DataFault fault) {
            if (faults.size() < WeatherCheck.MOST_FAULTS) {
                faults.add(fault);
            } else {
                moreFaults++;
            }
        }
    }

    private static WeatherCheck refused(DataFault fault) {
        return new WeatherCheck(null, List.of(fault), 0);
    }

    private DataFault empty() {
        return new DataFault(
                FaultCode.FILE_EMPTY,
                new Position(source.name(), 1, 1),
                "the table holds no day",
                "a header line and then a line a day",
                "");
    }

    private Position at(int line, int cell) {
        return CsvColumns.position(source, line, cell, separator);
    }
}
