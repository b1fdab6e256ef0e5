package org.nestyear.app.book;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.nestyear.records.book.Change;
import org.nestyear.records.book.Sheet;

/**
 * What reading a file into a table would change.
 *
 * @param sheet the table
 * @param name the file
 * @param lines a line of the file each, in its order
 */
public record ImportPlan(Sheet sheet, String name, List<Line> lines) {
    public ImportPlan {
        lines = List.copyOf(lines);
    }

    /** What becomes of a line. */
    public enum Kind {
        ADDED("new"),
        CORRECTED("corrects"),
        SAME("already there");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        /** The word shown. */
        public String word() {
            return word;
        }
    }

    /**
     * A line of the file.
     *
     * @param line its number, from 1
     * @param kind what becomes of it
     * @param told for a new entry its values, for a correction "old becomes new", by column
     * @param change what is written, if anything
     */
    public record Line(int line, Kind kind, Map<String, String> told, Optional<Change> change) {}

    /** How many lines of this kind there are. */
    public int count(Kind kind) {
        return (int) lines.stream().filter(line -> line.kind() == kind).count();
    }
}
