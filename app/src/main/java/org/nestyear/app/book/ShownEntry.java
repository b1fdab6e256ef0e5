package org.nestyear.app.book;

import java.time.Instant;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.nestyear.records.book.Correction;
import org.nestyear.records.book.Entry;

/**
 * An entry as a person reads it.
 *
 * @param table name of its table
 * @param title the table's name on a page
 * @param id made by the program
 * @param revision 1 when it was made, one more at every change
 * @param who who wrote it or corrected it last
 * @param changedAt when it last changed
 * @param removed whether it was taken out
 * @param values names in place of ids, by column
 * @param history replaced values, newest first
 */
public record ShownEntry(
        String table,
        String title,
        String id,
        int revision,
        String who,
        Instant changedAt,
        boolean removed,
        Map<String, String> values,
        List<Replaced> history) {
    /**
     * A value that was replaced.
     *
     * @param at when
     * @param who by whom
     * @param column its column
     * @param was the old value, empty for nothing
     * @param became the new one, empty for nothing
     * @param takenBack whether the correction was taken back
     */
    public record Replaced(Instant at, String who, String column, String was, String became, boolean takenBack) {}

    public ShownEntry {
        values = Collections.unmodifiableMap(new LinkedHashMap<>(values));
        history = List.copyOf(history);
    }

    static ShownEntry of(Entry entry, Names names, List<Correction> history) {
        return new ShownEntry(
                entry.sheet().name(),
                entry.sheet().title(),
                entry.id(),
                entry.revision(),
                entry.who(),
                entry.changedAt(),
                entry.removed(),
                BookDesk.shown(entry, names),
                history.stream()
                        .map(c -> new Replaced(
                                c.at(),
                                c.who(),
                                c.column(),
                                named(entry, c.column(), c.was(), names),
                                named(entry, c.column(), c.became(), names),
                                c.takenBack()))
                        .toList());
    }

    private static String named(Entry entry, String column, String value, Names names) {
        return entry.sheet()
                .column(column)
                .filter(c -> !c.linkTo().isEmpty() && !value.isEmpty())
                .map(c -> names.name(c.linkTo(), value))
                .orElse(value);
    }
}
