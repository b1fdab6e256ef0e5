package org.nestyear.data;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Reads daily weather of NOAA's Global Historical Climatology Network (Menne et al. 2012), in any of its three layouts:
 * the fixed-width {@code .dly} file, the table of one value a line, and the table of one day a line. Values are whole
 * tenths and are divided by ten, never rounded. A value that failed a check of the service is left out and counted; a
 * trace of rain is 0 mm; what is not there stays missing.
 */
public final class GhcnDaily {
    private static final int FLAGS_OF_LAST_DAY = 3;
    private static final int WIDTH = 269;
    private static final int FIRST_DAY_AT = 21;
    private static final int DAY_WIDTH = 8;
    private static final int MOST_DAYS = 31;
    private static final String FEWEST_CELLS_WORDS = "station, day, element, value and three marks";

    private final SourceText source;
    private final GhcnDays days;
    private final List<DataFault> faults = new ArrayList<>();
    private int moreFaults;

    private GhcnDaily(SourceText source) {
        this.source = source;
        this.days = new GhcnDays(source.name());
    }

    /**
     * Reads a file of one of the three layouts.
     *
     * @throws DataFault the first thing that is wrong with it, or that it has none of these layouts
     */
    public static GhcnReading read(TextSource file) {
        SourceText source = SourceText.read(file);
        GhcnLayout layout = GhcnLayout.of(source);
        if (layout == null) {
            throw new DataFault(
                    FaultCode.WEATHER_SYNTAX,
                    new Position(source.name(), 1, 1),
                    "the file does not begin like one of GHCN-Daily",
                    "a .dly file, or a table as the service hands it out",
                    "");
        }
        GhcnDaily reader = new GhcnDaily(source);
        reader.readLines(layout);
        if (!reader.faults.isEmpty()) {
            throw reader.faults.get(0);
        }
        return reader.days.result();
    }

    /** Reads a file to its end and lists everything that is wrong with it. */
    static WeatherCheck check(SourceText source, GhcnLayout layout) {
        GhcnDaily reader = new GhcnDaily(source);
        reader.readLines(layout);
        @Nullable WeatherFile file = null;
        try {
            file = reader.days.result().file();
        } catch (DataFault fault) {
            // With faults in the lines, what is missing at the end is only their consequence.
            if (reader.faults.isEmpty()) {
                reader.keep(fault);
            }
        }
        return new WeatherCheck(file, reader.faults, reader.moreFaults);
    }

    private void readLines(GhcnLayout layout) {
        if (layout == GhcnLayout.BY_STATION) {
            readTable();
            return;
        }
        for (int i = 0; i < source.lines().size(); i++) {
            String line = source.lines().get(i);
            if (line.isBlank()) {
                continue;
            }
            try {
                if (layout == GhcnLayout.FIXED_WIDTH) {
                    readMonth(line, i + 1);
                } else if (i > 0 || !GhcnLayout.hasHeading(line)) {
                    readValue(line.replace("\"", "").split(",", -1), i + 1);
                }
            } catch (DataFault fault) {
                keep(fault);
            }
        }
    }

    private void keep(DataFault fault) {
        if (faults.size() < WeatherCheck.MOST_FAULTS) {
            faults.add(fault);
        } else {
            moreFaults++;
        }
    }

    private void readMonth(String line, int number) {
        // Editors cut blanks at the end of a line: only marks may be missing.
        if (line.length() < WIDTH - FLAGS_OF_LAST_DAY || line.length() > WIDTH) {
            throw new DataFault(
                    FaultCode.WEATHER_CELLS,
                    new Position(source.name(), number, 1),
                    "the line has " + line.length() + " characters",
                    WIDTH + " characters, as every line of a .dly file",
                    "the file was cut or changed on the way: fetch it again");
        }
        String padded = line + " ".repeat(WIDTH - line.length());
        days.station(padded.substring(0, 11), new Position(source.name(), number, 1));
        YearMonth month = month(padded, number);
        String name = padded.substring(17, FIRST_DAY_AT);
        GhcnElement element = GhcnElement.find(name);
        if (element == null) {
            days.other(name);
            return;
        }
        for (int day = 1; day <= MOST_DAYS; day++) {
            int at = FIRST_DAY_AT + DAY_WIDTH * (day - 1);
            String value = padded.substring(at, at + 5);
            Position position = new Position(source.name(), number, at + 1);
            if (!month.isValidDay(day)) {
                checkNoDay(value, month, day, position);
                continue;
            }
            days.value(
                    month.atDay(day),
                    element,
                    value,
                    padded.substring(at + 5, at + 6),
                    padded.substring(at + 6, at + 7),
                    "",
                    position);
        }
    }

    private static void checkNoDay(String value, YearMonth month, int day, Position at) {
        if (!value.isBlank() && !value.strip().equals("-9999")) {
            throw new DataFault(
                    FaultCode.WEATHER_DATE,
                    at,
                    "there is a value for day " + day + " of " + month + ", which has " + month.lengthOfMonth()
                            + " days",
                    "-9999 on days that do not exist",
                    "");
        }
    }

    private YearMonth month(String line, int number) {
        try {
            return YearMonth.of(Integer.parseInt(line, 11, 15, 10), Integer.parseInt(line, 15, 17, 10));
        } catch (NumberFormatException | DateTimeException e) {
            throw new DataFault(
                    FaultCode.WEATHER_DATE,
                    new Position(source.name(), number, 12),
                    "\"" + line.substring(11, 17) + "\" is not a year and month",
                    "four digits of the year and two of the month",
                    "");
        }
    }

    private void readValue(String[] cells, int number) {
        if (cells.length < 7) {
            throw new DataFault(
                    FaultCode.WEATHER_CELLS,
                    new Position(source.name(), number, 1),
                    "the row has " + cells.length + (cells.length == 1 ? " cell" : " cells"),
                    FEWEST_CELLS_WORDS,
                    "");
        }
        days.station(cells[0], new Position(source.name(), number, 1));
        GhcnElement element = GhcnElement.find(cells[2].strip());
        if (element == null) {
            days.other(cells[2].strip());
            return;
        }
        days.value(
                date(cells[1], at(number, 1)),
                element,
                cells[3],
                cells[4],
                cells[5],
                cells.length > 7 ? cells[7] : "",
                at(number, 3));
    }

    private void readTable() {
        try (CsvReader<CsvRecord> reader = CsvReader.builder()
                .skipEmptyLines(true)
                .allowUnclosedQuote(false)
                .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
                .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
                .ofCsvRecord(source.text())) {
            Iterator<CsvRecord> rows = reader.iterator();
            List<String> headings =
                    rows.next().getFields().stream().map(String::strip).toList();
            while (rows.hasNext()) {
                CsvRecord row = rows.next();
                try {
                    readDay(headings, row);
                } catch (DataFault fault) {
                    keep(fault);
                }
            }
            days.checkTenths(new Position(source.name(), 1, 1));
        } catch (DataFault fault) {
            keep(fault);
        } catch (CsvParseException e) {
            keep(new DataFault(
                    FaultCode.WEATHER_SYNTAX,
                    new Position(source.name(), source.lines().size(), 1),
                    "a quotation mark is opened and not closed again",
                    "cells in pairs of quotation marks, or without any",
                    ""));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void readDay(List<String> headings, CsvRecord row) {
        int number = (int) row.getStartingLineNumber();
        if (row.getFieldCount() < 2) {
            throw new DataFault(
                    FaultCode.WEATHER_CELLS,
                    new Position(source.name(), number, 1),
                    "the row has one cell",
                    headings.size() + ", as in the header line",
                    "");
        }
        days.station(row.getField(0), new Position(source.name(), number, 1));
        LocalDate date = date(row.getField(1), at(number, 1));
        for (int i = 2; i < Math.min(headings.size(), row.getFieldCount()); i++) {
            String heading = headings.get(i);
            if (i + 1 >= headings.size() || !headings.get(i + 1).equals(heading + "_ATTRIBUTES")) {
                continue;
            }
            GhcnElement element = GhcnElement.find(heading);
            if (element == null) {
                days.other(heading);
                continue;
            }
            String marks = i + 1 < row.getFieldCount() ? row.getField(i + 1) : "";
            String[] parts = (marks + ",,,").split(",", -1);
            days.value(date, element, row.getField(i), parts[0], parts[1], parts[3], at(number, i));
        }
    }

    private static LocalDate date(String cell, Position at) {
        LocalDate date = Cells.date(cell);
        if (date == null) {
            throw new DataFault(
                    FaultCode.WEATHER_DATE,
                    at,
                    "\"" + cell.strip() + "\" is not a day of the calendar written year first",
                    "a date such as 2015-04-20 or 20150420",
                    "");
        }
        return date;
    }

    private Position at(int line, int cell) {
        return CsvColumns.position(source, line, cell, ',');
    }
}
