package org.nestyear.data;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.util.List;

/** Writes a table of text cells: RFC 4180 with CRLF, and no cell that a spreadsheet would take for a formula. */
public final class PlainTableWriter {
    private final CsvWriter csv;

    /**
     * A table on its way into a text.
     *
     * @param to receives it; it stays the caller's to close
     */
    public PlainTableWriter(Writer to) {
        this.csv = CsvWriter.builder().lineDelimiter(LineDelimiter.CRLF).build(to);
    }

    /** Writes a row; the header is the first. */
    public void row(List<String> cells) {
        csv.writeRecord(cells.stream().map(FormulaGuard::put).toList());
    }

    /** Hands everything on; call it after the last row. */
    public void finish() {
        try {
            csv.flush();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
