package org.nestyear.data;

/**
 * A place in a text file, as editors count it.
 *
 * @param file name of the file as the keeper gave it
 * @param line line from 1, or 0 when the whole file is meant
 * @param column character in the line from 1, or 0 when the whole line is meant
 */
public record Position(String file, int line, int column) {
    /** The file as a whole. */
    public static Position ofFile(String file) {
        return new Position(file, 0, 0);
    }

    /** {@code FILE:LINE:COLUMN}, shorter where line or column are not known. */
    @Override
    public String toString() {
        if (line == 0) {
            return file;
        }
        return column == 0 ? file + ":" + line : file + ":" + line + ":" + column;
    }
}
