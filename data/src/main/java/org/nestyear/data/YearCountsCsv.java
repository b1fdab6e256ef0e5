package org.nestyear.data;

import de.siegmar.fastcsv.reader.CsvRecord;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Reads a table of counts, one a year: the columns {@code year} and {@code count}, in any order of years. Other columns are
 * not looked at; a row without a count, or with the mark of something not counted, is passed over.
 */
public final class YearCountsCsv {
    private static final List<String> COUNT = List.of("count", "females", "number", "n");
    private static final String EXPECTED = "the columns \"year\" and \"count\"";

    private final SourceText source;
    private final char separator;
    private final SortedMap<Integer, Double> counts = new TreeMap<>();
    private int lastLine;
    private int yearCell = -1;
    private int countCell = -1;

    private YearCountsCsv(SourceText source) {
        this.source = source;
        this.separator = CsvColumns.separator(source);
    }

    /**
     * The counts by year; 0 or more each, one at least.
     *
     * @throws DataFault the first thing that is wrong with the table
     */
    public static SortedMap<Integer, Double> read(TextSource file) {
        YearCountsCsv table = new YearCountsCsv(SourceText.read(file));
        table.readAll();
        return Collections.unmodifiableSortedMap(table.counts);
    }

    private void readAll() {
        CsvColumns.eachRow(source, separator, FaultCode.COUNTS_SYNTAX, this::row);
        if (counts.isEmpty()) {
            throw new DataFault(
                    FaultCode.FILE_EMPTY,
                    new Position(source.name(), 1, 1),
                    "the table holds no count",
                    EXPECTED + " and then a line a year",
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
        yearCell = names.indexOf("year");
        countCell = COUNT.stream()
                .mapToInt(names::indexOf)
                .filter(cell -> cell >= 0)
                .findFirst()
                .orElse(-1);
        if (yearCell < 0 || countCell < 0) {
            throw new DataFault(
                    FaultCode.COUNTS_COLUMN,
                    new Position(source.name(), lastLine, 1),
                    "the table has the columns " + String.join(", ", row.getFields()),
                    EXPECTED,
                    "");
        }
    }

    private void take(CsvRecord row) {
        String count = text(row, countCell);
        if (Cells.isMissing(count)) {
            return;
        }
        String year = text(row, yearCell);
        if (!year.matches("\\d{4}")) {
            throw fault(yearCell, year, "a year such as 2015");
        }
        double number = Cells.number(count, separator == ',' ? '.' : ',');
        if (!(number >= 0)) {
            throw fault(countCell, count, "a number of 0 or more");
        }
        if (counts.putIfAbsent(Integer.parseInt(year), number) != null) {
            throw new DataFault(
                    FaultCode.COUNTS_TWICE, at(yearCell), "there are two counts of " + year, "one count a year", "");
        }
    }

    private String text(CsvRecord row, int cell) {
        return cell < row.getFieldCount() ? row.getField(cell).strip() : "";
    }

    private DataFault fault(int cell, String found, String expected) {
        return new DataFault(
                FaultCode.COUNTS_NUMBER, at(cell), "\"" + found + "\" stands in the table of counts", expected, "");
    }

    private Position at(int cell) {
        return CsvColumns.position(source, lastLine, cell, separator);
    }
}
