package org.nestyear.data;

import de.siegmar.fastcsv.reader.CsvRecord;
import java.time.DateTimeException;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.nestyear.core.weather.LoggedTemperature;
import org.nestyear.core.weather.LoggedTemperatures;

/**
 * Reads the log of a thermometer in a box, room or fridge: a column {@code time} ({@code 2024-03-09 22:00}, with or without
 * seconds and an offset from UTC) and a column {@code temp_c}, or {@code temp_f}. Cells are parted as in weather tables.
 * Other columns are not looked at; a row without a temperature is passed over and leaves a gap. With offsets, all times
 * are told by the offset of the first row, so that a change of the clocks does no harm.
 */
public final class TemperatureLogCsv {
    private static final String TIME = "time";
    private static final String EXPECTED_TIME = "a time such as 2024-03-09 22:00, year first";
    private static final double COLDEST_C = -40;
    private static final double HOTTEST_C = 60;
    private static final double HOTTEST_ROOM_F = 130;
    /** What digital probes show when they are not there, and when they have just been switched on. */
    private static final double PROBE_ABSENT_C = -127;

    private static final double PROBE_STARTING_C = 85;
    private static final double AS_SHOWN_C = 0.05;

    private final SourceText source;
    private final char separator;
    private final List<LoggedTemperature> readings = new ArrayList<>();
    private @Nullable ZoneOffset offset;
    private int lastLine;
    private int timeCell = -1;
    private int temperatureCell = -1;
    private WeatherUnit unit = WeatherUnit.CELSIUS;

    private TemperatureLogCsv(SourceText source) {
        this.source = source;
        this.separator = CsvColumns.separator(source);
    }

    /**
     * The readings.
     *
     * @throws DataFault the first thing that is wrong with the log
     */
    public static LoggedTemperatures read(TextSource file) {
        TemperatureLogCsv log = new TemperatureLogCsv(SourceText.read(file));
        log.readAll();
        return new LoggedTemperatures(log.readings);
    }

    private void readAll() {
        CsvColumns.eachRow(source, separator, FaultCode.LOG_SYNTAX, this::row);
        if (readings.size() < 2) {
            throw new DataFault(
                    FaultCode.FILE_EMPTY,
                    new Position(source.name(), 1, 1),
                    "the log holds " + (readings.isEmpty() ? "no reading" : "a single reading"),
                    "a header line such as time,temp_c and at least two readings",
                    "");
        }
    }

    private void row(CsvRecord row) {
        boolean first = lastLine == 0;
        lastLine = (int) row.getStartingLineNumber();
        if (first) {
            header(row);
        } else {
            take(row);
        }
    }

    private void header(CsvRecord row) {
        for (int i = 0; i < row.getFieldCount(); i++) {
            String name = row.getField(i).strip().toLowerCase(Locale.ROOT);
            boolean temperature = name.equals("temp_c") || name.equals("temp_f");
            if (name.equals(TIME) ? timeCell >= 0 : temperature && temperatureCell >= 0) {
                throw new DataFault(
                        FaultCode.LOG_COLUMN,
                        at(i),
                        "a second column is named \"" + row.getField(i).strip() + "\"",
                        "one column of times and one of temperatures",
                        "the log is of two probes: keep the one among the bees");
            }
            if (name.equals(TIME)) {
                timeCell = i;
            } else if (temperature) {
                temperatureCell = i;
                unit = name.endsWith("f") ? WeatherUnit.FAHRENHEIT : WeatherUnit.CELSIUS;
            }
        }
        if (timeCell < 0 || temperatureCell < 0) {
            throw new DataFault(
                    FaultCode.LOG_COLUMN,
                    new Position(source.name(), lastLine, 1),
                    "the log has the columns " + String.join(", ", row.getFields()),
                    "the columns time and temp_c (or temp_f)",
                    timeCell < 0 && time(row.getField(0).strip()) != null
                            ? "the header line is missing: the first line begins with a time"
                            : "");
        }
    }

    private void take(CsvRecord row) {
        String timeText = text(row, timeCell);
        String text = text(row, temperatureCell);
        if (Cells.isMissing(text)) {
            return;
        }
        LocalDateTime time = timeOf(timeText);
        double given = Cells.number(text, separator == ',' ? '.' : ',');
        if (Double.isNaN(given)) {
            throw fault(
                    FaultCode.LOG_NUMBER,
                    temperatureCell,
                    "the temperature is \"" + text + "\", which is not a number",
                    "a number in " + unit.symbol() + ", or an empty cell when it was not measured",
                    "");
        }
        double celsius = unit.toOwn(given);
        checkRange(text, celsius);
        checkOrder(time);
        readings.add(new LoggedTemperature(time, celsius));
    }

    private LocalDateTime timeOf(String text) {
        LocalDateTime local = time(text);
        if (local != null) {
            if (offset != null) {
                throw fault(
                        FaultCode.LOG_TIME,
                        timeCell,
                        "\"" + text + "\" has no offset from UTC, and the times above it have one",
                        "an offset in every time, or in none",
                        "");
            }
            return local;
        }
        OffsetDateTime moment = moment(text);
        if (moment == null) {
            boolean dayFirst = text.matches("\\d{1,2}[./-]\\d{1,2}[./-]\\d{2,4}.*");
            throw fault(
                    FaultCode.LOG_TIME,
                    timeCell,
                    "\"" + text + "\" is not a time of a day",
                    EXPECTED_TIME,
                    dayFirst ? "day and month stand first here: write year, month, day" : "");
        }
        if (offset == null && !readings.isEmpty()) {
            throw fault(
                    FaultCode.LOG_TIME,
                    timeCell,
                    "\"" + text + "\" has an offset from UTC, and the times above it have none",
                    "an offset in every time, or in none",
                    "");
        }
        offset = offset == null ? moment.getOffset() : offset;
        return moment.withOffsetSameInstant(offset).toLocalDateTime();
    }

    private static @Nullable LocalDateTime time(String text) {
        try {
            return LocalDateTime.parse(text.replace(' ', 'T'));
        } catch (DateTimeException e) {
            return null;
        }
    }

    private static @Nullable OffsetDateTime moment(String text) {
        try {
            return OffsetDateTime.parse(text.replace(' ', 'T'));
        } catch (DateTimeException e) {
            return null;
        }
    }

    private void checkRange(String text, double celsius) {
        boolean absent = Math.abs(celsius - PROBE_ABSENT_C) < AS_SHOWN_C;
        boolean starting = Math.abs(celsius - PROBE_STARTING_C) < AS_SHOWN_C;
        if (absent || starting) {
            throw fault(
                    FaultCode.LOG_SENSOR,
                    temperatureCell,
                    "the temperature is " + text + " " + unit.symbol() + ", which a probe shows "
                            + (absent ? "when it is not connected" : "before its first reading"),
                    "a temperature that was measured, or an empty cell",
                    starting && unit == WeatherUnit.CELSIUS
                            ? "clear the cell; or the log is in Fahrenheit: name the column temp_f"
                            : "clear the cell");
        }
        if (celsius < COLDEST_C || celsius > HOTTEST_C) {
            boolean fahrenheit = unit == WeatherUnit.CELSIUS && celsius > 0 && celsius <= HOTTEST_ROOM_F;
            throw fault(
                    FaultCode.LOG_RANGE,
                    temperatureCell,
                    "the temperature is " + text + " " + unit.symbol(),
                    String.format(Locale.ROOT, "%.0f to %.0f °C", COLDEST_C, HOTTEST_C),
                    fahrenheit
                            ? "the log is in Fahrenheit: name the column temp_f"
                            : "the probe failed: clear the cell");
        }
    }

    private void checkOrder(LocalDateTime time) {
        if (readings.isEmpty()) {
            return;
        }
        LocalDateTime before = readings.get(readings.size() - 1).time();
        if (time.equals(before)) {
            throw fault(
                    FaultCode.LOG_TWICE,
                    timeCell,
                    time + " stands there twice",
                    "each time once",
                    "delete one of the two rows");
        }
        if (time.isBefore(before)) {
            throw fault(
                    FaultCode.LOG_ORDER,
                    timeCell,
                    time + " comes after " + before,
                    "readings in order of time",
                    "the clocks went back here: log in winter time, or with the offset from UTC");
        }
    }

    private String text(CsvRecord row, int cell) {
        return cell < row.getFieldCount() ? row.getField(cell).strip() : "";
    }

    private DataFault fault(FaultCode code, int cell, String found, String expected, String advice) {
        return new DataFault(code, at(cell), found, expected, advice);
    }

    private Position at(int cell) {
        return CsvColumns.position(source, lastLine, cell, separator);
    }
}
