package org.nestyear.data;

/** Finds the character at which a cell begins, so that a message can point to it. */
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
}
