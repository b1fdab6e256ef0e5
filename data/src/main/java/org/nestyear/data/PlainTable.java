package org.nestyear.data;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Consumer;

/**
 * A table of text cells (RFC 4180) as it stands in a file, every row as long as its header. A comma parts the cells, or a
 * semicolon or tab where the header has no comma; what {@link PlainTableWriter} wrote comes back as it was given.
 */
public final class PlainTable {
    private final SourceText source;
    private final char separator;
    private final List<String> header;
    private final List<Row> rows;

    private PlainTable(SourceText source, char separator, List<String> header, List<Row> rows) {
        this.source = source;
        this.separator = separator;
        this.header = List.copyOf(header);
        this.rows = rows;
    }

    /**
     * A row.
     *
     * @param line line of the file it begins on, from 1
     * @param cells as many as the header has
     */
    public record Row(int line, List<String> cells) {}

    /**
     * Reads a table.
     *
     * @throws DataFault if it is no text, a quotation mark is not closed, a heading stands there twice, or a row has more or
     *     fewer cells than the header
     */
    public static PlainTable read(TextSource file) {
        SourceText source = SourceText.read(file);
        char separator = CsvColumns.separator(source);
        List<String> header = new ArrayList<>();
        List<Row> rows = new ArrayList<>();
        int last = 0;
        try (CsvReader<CsvRecord> reader = CsvReader.builder()
                .fieldSeparator(separator)
                // A name may begin with a hash.
                .commentStrategy(CommentStrategy.NONE)
                .skipEmptyLines(true)
                .allowUnclosedQuote(false)
                .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
                .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
                .ofCsvRecord(source.text())) {
            for (CsvRecord record : reader) {
                last = (int) record.getStartingLineNumber();
                if (header.isEmpty()) {
                    header.addAll(headings(source, separator, record));
                } else {
                    rows.add(row(source, header, record));
                }
            }
        } catch (CsvParseException e) {
            throw new DataFault(
                    FaultCode.TABLE_SYNTAX,
                    new Position(source.name(), last + 1, 1),
                    "a quotation mark is opened and not closed again",
                    "cells in pairs of quotation marks, or without any",
                    "");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return new PlainTable(source, separator, header, rows);
    }

    /**
     * Hands over the rows of a table too long to hold, the header as the first.
     *
     * @param name name of the file, for messages
     * @throws DataFault if a quotation mark is not closed, or a row has more or fewer cells than the header
     */
    public static void eachRow(String name, Reader text, Consumer<Row> take) {
        int width = -1;
        int last = 0;
        // The reader stays open: it may be one file of many.
        try {
            CsvReader<CsvRecord> reader = CsvReader.builder()
                    .commentStrategy(CommentStrategy.NONE)
                    .allowUnclosedQuote(false)
                    .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
                    .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
                    .ofCsvRecord(text);
            for (CsvRecord record : reader) {
                last = (int) record.getStartingLineNumber();
                if (width >= 0 && record.getFieldCount() != width) {
                    throw new DataFault(
                            FaultCode.TABLE_CELLS,
                            new Position(name, last, 1),
                            "the line has " + record.getFieldCount() + " cells",
                            width + ", as the header has",
                            "the file is cut off");
                }
                width = record.getFieldCount();
                take.accept(new Row(
                        last,
                        record.getFields().stream().map(FormulaGuard::take).toList()));
            }
        } catch (CsvParseException e) {
            throw new DataFault(
                    FaultCode.TABLE_SYNTAX,
                    new Position(name, last + 1, 1),
                    "a quotation mark is opened and not closed again",
                    "cells in pairs of quotation marks, or without any",
                    "");
        }
    }

    private static List<String> headings(SourceText source, char separator, CsvRecord record) {
        List<String> names = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        for (String cell : record.getFields()) {
            String name = cell.strip().toLowerCase(Locale.ROOT);
            if (!seen.add(name)) {
                throw new DataFault(
                        FaultCode.TABLE_COLUMN,
                        CsvColumns.position(source, (int) record.getStartingLineNumber(), names.size(), separator),
                        "the column \"" + name + "\" stands there twice",
                        "every heading once",
                        "");
            }
            names.add(name);
        }
        return names;
    }

    private static Row row(SourceText source, List<String> header, CsvRecord record) {
        int line = (int) record.getStartingLineNumber();
        List<String> cells = record.getFields();
        if (cells.size() != header.size()) {
            throw new DataFault(
                    FaultCode.TABLE_CELLS,
                    new Position(source.name(), line, 1),
                    "the line has " + cells.size() + (cells.size() == 1 ? " cell" : " cells"),
                    header.size() + ", as the header has",
                    cells.size() > header.size()
                            ? "a cell that holds a comma lacks its quotation marks"
                            : "the file is cut off");
        }
        List<String> told = new ArrayList<>(cells.size());
        cells.forEach(cell -> told.add(FormulaGuard.take(cell)));
        return new Row(line, told);
    }

    /** The headings, in small letters. */
    public List<String> header() {
        return header;
    }

    /** The rows below the header. */
    public List<Row> rows() {
        return rows;
    }

    /** The name of the file, for messages. */
    public String name() {
        return source.name();
    }

    /**
     * Where a cell stands.
     *
     * @param line line from 1
     * @param column heading, or a word that is none for the line as a whole
     */
    public Position at(int line, String column) {
        int cell = header.indexOf(column);
        return cell < 0 ? new Position(source.name(), line, 1) : CsvColumns.position(source, line, cell, separator);
    }

    /** A fault at a cell. */
    public DataFault fault(FaultCode code, int line, String column, String found, String expected, String advice) {
        return new DataFault(code, at(line, column), found, expected, advice);
    }
}
