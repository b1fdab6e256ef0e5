package org.nestyear.records.book;

import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Which entries of a table are asked for.
 *
 * @param sheet the table
 * @param equal values that columns must have; an empty value stands for "not told"
 * @param dateColumn the column of days the span is about, or null
 * @param from first day, ISO 8601, or null
 * @param to last day, ISO 8601, or null
 * @param newestFirst by the date column where there is one, else by when they were written
 * @param most how many at most
 * @param skip how many to pass over first
 */
public record Search(
        Sheet sheet,
        Map<String, String> equal,
        @Nullable String dateColumn,
        @Nullable String from,
        @Nullable String to,
        boolean newestFirst,
        int most,
        int skip) {
    public Search {
        equal = Map.copyOf(equal);
    }

    /** All entries of a table, in the order they were written. */
    public static Search of(Sheet sheet) {
        String day = sheet.column("on_date").isPresent()
                ? "on_date"
                : sheet.column("read_at").isPresent() ? "read_at" : null;
        return new Search(sheet, Map.of(), day, null, null, false, Integer.MAX_VALUE, 0);
    }

    /** Only those that have this value in this column; empty for those that tell nothing there. */
    public Search where(String column, String value) {
        Map<String, String> more = new LinkedHashMap<>(equal);
        more.put(column, value);
        return new Search(sheet, more, dateColumn, from, to, newestFirst, most, skip);
    }

    /** Only those of these days; without a date column there are none. */
    public Search between(String first, String last) {
        return new Search(sheet, equal, dateColumn, first, last, newestFirst, most, skip);
    }

    /** Newest first, so many at most, after passing over some. */
    public Search newest(int atMost, int passOver) {
        return new Search(sheet, equal, dateColumn, from, to, true, atMost, passOver);
    }
}
