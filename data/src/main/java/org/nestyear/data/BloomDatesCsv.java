package org.nestyear.data;

import de.siegmar.fastcsv.reader.CsvRecord;
import java.time.LocalDate;
import java.time.Year;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Reads a table of observed bloom dates, one a year: a column {@code date}, or {@code year} and {@code day_of_year}. Other
 * columns are not looked at; a row without a date, or with the mark of something not observed, is passed over.
 */
public final class BloomDatesCsv {
    private static final List<String> DATE = List.of("date", "bloom_date");
    private static final List<String> DAY = List.of("day_of_year", "doy", "bloom_doy");
    private static final String EXPECTED = "a column \"date\", or the columns \"year\" and \"day_of_year\"";

    private final SourceText source;
    private final char separator;
    private final SortedMap<Integer, LocalDate> dates = new TreeMap<>();
    private int lastLine;
    private int dateCell = -1;
    private int yearCell = -1;
    private int dayCell = -1;

    private BloomDatesCsv(SourceText source) {
        this.source = source;
        this.separator = CsvColumns.separator(source);
    }

    /**
     * The dates, in order of year.
     *
     * @throws DataFault the first thing that is wrong with the table
     */
    public static List<LocalDate> read(TextSource file) {
        BloomDatesCsv table = new BloomDatesCsv(SourceText.read(file));
        table.readAll();
        return List.copyOf(table.dates.values());
    }

    private void readAll() {
        CsvColumns.eachRow(source, separator, FaultCode.BLOOM_SYNTAX, this::row);
        if (lastLine == 0) {
            throw new DataFault(
                    FaultCode.FILE_EMPTY, new Position(source.name(), 1, 1), "the table holds no line", EXPECTED, "");
        }
        if (dates.isEmpty()) {
            throw new DataFault(
                    FaultCode.FILE_EMPTY,
                    new Position(source.name(), 1, 1),
                    "the table holds no bloom date",
                    "a header line and then a date a year",
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
        List<String> names = new ArrayList<>();
        row.getFields().forEach(name -> names.add(name.strip().toLowerCase(Locale.ROOT)));
        dateCell = first(names, DATE);
        yearCell = names.indexOf("year");
        dayCell = first(names, DAY);
        if (dateCell < 0 && (yearCell < 0 || dayCell < 0)) {
            throw new DataFault(
                    FaultCode.BLOOM_COLUMN,
                    new Position(source.name(), lastLine, 1),
                    "the table has the columns " + String.join(", ", row.getFields()),
                    EXPECTED,
                    "");
        }
    }

    private static int first(List<String> names, List<String> wanted) {
        return wanted.stream()
                .mapToInt(names::indexOf)
                .filter(cell -> cell >= 0)
                .findFirst()
                .orElse(-1);
    }

    private void take(CsvRecord row) {
        int cell = dateCell >= 0 ? dateCell : dayCell;
        String text = text(row, cell);
        if (Cells.isMissing(text)) {
            return;
        }
        LocalDate date = dateCell >= 0 ? date(text) : dayOfYear(row, text);
        if (dates.putIfAbsent(date.getYear(), date) != null) {
            throw new DataFault(
                    FaultCode.BLOOM_TWICE,
                    at(cell),
                    "there are two dates in " + date.getYear(),
                    "one date a year, the day of full bloom",
                    "");
        }
    }

    private LocalDate date(String text) {
        LocalDate date = Cells.date(text);
        if (date == null) {
            throw fault(dateCell, text, "a date such as 2015-04-20, year first");
        }
        return date;
    }

    private LocalDate dayOfYear(CsvRecord row, String text) {
        String year = text(row, yearCell);
        if (!year.matches("\\d{4}")) {
            throw fault(yearCell, year, "a year such as 2015");
        }
        int number = Integer.parseInt(year);
        int days = Year.of(number).length();
        if (!text.matches("\\d{1,3}") || Integer.parseInt(text) < 1 || Integer.parseInt(text) > days) {
            throw fault(dayCell, text, "a day of the year from 1 to " + days);
        }
        return LocalDate.ofYearDay(number, Integer.parseInt(text));
    }

    private String text(CsvRecord row, int cell) {
        return cell < row.getFieldCount() ? row.getField(cell).strip() : "";
    }

    private DataFault fault(int cell, String found, String expected) {
        return new DataFault(
                FaultCode.BLOOM_DATE, at(cell), "\"" + found + "\" stands in the table of bloom dates", expected, "");
    }

    private Position at(int cell) {
        return CsvColumns.position(source, lastLine, cell, separator);
    }
}
