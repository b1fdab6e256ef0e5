package org.nestyear.data;

import de.siegmar.fastcsv.reader.CsvRecord;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** A keeper's small table: a header and rows, each with its line, so that a message can point to a cell. */
final class KeptTable {
    private final SourceText source;
    private final char separator;
    private final List<String> names = new ArrayList<>();
    private final List<Row> rows = new ArrayList<>();
    private int headerLine = 1;

    private KeptTable(SourceText source) {
        this.source = source;
        this.separator = CsvColumns.separator(source);
    }

    /**
     * The table.
     *
     * @param syntax code for a quotation mark that is not closed
     * @throws DataFault if the file is not there, is no text, or a quotation mark is not closed
     */
    static KeptTable read(TextSource file, FaultCode syntax) {
        KeptTable table = new KeptTable(SourceText.read(file));
        CsvColumns.eachRow(table.source, table.separator, syntax, table::take);
        return table;
    }

    private void take(CsvRecord row) {
        int line = (int) row.getStartingLineNumber();
        if (names.isEmpty()) {
            row.getFields().forEach(name -> names.add(name.strip().toLowerCase(Locale.ROOT)));
            headerLine = line;
        } else {
            rows.add(new Row(line, row.getFields()));
        }
    }

    List<String> names() {
        return names;
    }

    List<Row> rows() {
        return rows;
    }

    /** A fault of the header. */
    DataFault headerFault(FaultCode code, String expected, String advice) {
        return new DataFault(
                code,
                new Position(source.name(), headerLine, 1),
                "the table has the columns " + String.join(", ", names),
                expected,
                advice);
    }

    /** A fault of one heading. */
    DataFault columnFault(FaultCode code, String name, String sentence, String expected, String advice) {
        Position at = CsvColumns.position(source, headerLine, names.lastIndexOf(name), separator);
        return new DataFault(code, at, sentence, expected, advice);
    }

    /** A fault of the whole table. */
    DataFault emptyFault(String what, String expected) {
        return new DataFault(FaultCode.FILE_EMPTY, new Position(source.name(), 1, 1), what, expected, "");
    }

    /** One row of the table. */
    final class Row {
        private final int line;
        private final List<String> cells;

        private Row(int line, List<String> cells) {
            this.line = line;
            this.cells = cells;
        }

        /** Text of the cell of this column, or nothing. */
        String text(String column) {
            int cell = names.indexOf(column);
            return cell >= 0 && cell < cells.size() ? cells.get(cell).strip() : "";
        }

        /** Number of the cell of this column; not a number when the cell holds none. */
        double number(String column) {
            return Cells.number(text(column), separator == ',' ? '.' : ',');
        }

        /** A fault of the cell of this column. */
        DataFault fault(FaultCode code, String column, String sentence, String expected, String advice) {
            Position at = CsvColumns.position(source, line, names.indexOf(column), separator);
            return new DataFault(code, at, sentence, expected, advice);
        }
    }
}
