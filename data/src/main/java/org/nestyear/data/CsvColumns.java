package org.nestyear.data;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/** How tables are read: what parts their cells, and where a cell begins, so that a message can point to it. */
final class CsvColumns {
    private CsvColumns() {}

    /** Position of the cell with this index in the line; column 1 when the line has no such cell. */
    static Position position(SourceText source, int line, int cell, char separator) {
        String text = source.line(line);
        boolean quoted = false;
        int seen = 0;
        for (int i = 0; i < text.length() && seen < cell; i++) {
            char c = text.charAt(i);
            if (c == '"') {
                quoted = !quoted;
            } else if (c == separator && !quoted) {
                seen++;
                if (seen == cell) {
                    return new Position(source.name(), line, i + 2);
                }
            }
        }
        return new Position(source.name(), line, 1);
    }

    /** The rows of a table; comments and empty lines are passed over, and rows may differ in their number of cells. */
    static CsvReader<CsvRecord> reader(SourceText source, char separator) {
        return CsvReader.builder()
                .fieldSeparator(separator)
                .commentStrategy(CommentStrategy.SKIP)
                .skipEmptyLines(true)
                .allowUnclosedQuote(false)
                .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
                .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
                .ofCsvRecord(source.text());
    }

    /**
     * Hands the rows of a table over one by one, the header first.
     *
     * @param syntax code for a quotation mark that is not closed
     * @throws DataFault if a quotation mark is not closed, or as {@code take} throws it
     */
    static void eachRow(SourceText source, char separator, FaultCode syntax, Consumer<CsvRecord> take) {
        int lastLine = 0;
        try (CsvReader<CsvRecord> reader = reader(source, separator)) {
            for (CsvRecord row : reader) {
                lastLine = (int) row.getStartingLineNumber();
                take.accept(row);
            }
        } catch (CsvParseException e) {
            throw new DataFault(
                    syntax,
                    new Position(source.name(), lastLine + 1, 1),
                    "a quotation mark is opened and not closed again",
                    "cells in pairs of quotation marks, or without any",
                    "");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** What parts the cells: a comma, or a semicolon or tab where the header line has no comma. */
    static char separator(SourceText source) {
        @Nullable String header = null;
        for (String line : source.lines()) {
            if (!line.isBlank() && !line.startsWith("#")) {
                header = line;
                break;
            }
        }
        if (header != null && header.indexOf(',') < 0) {
            if (header.indexOf(';') >= 0) {
                return ';';
            }
            if (header.indexOf('\t') >= 0) {
                return '\t';
            }
        }
        return ',';
    }
}
