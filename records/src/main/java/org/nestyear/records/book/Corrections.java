package org.nestyear.records.book;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.JdbcTemplate;

/** Writes other values over an entry, and the old ones beside it. */
final class Corrections {
    /** Stands in place of a column where an entry was taken out. */
    static final String TAKEN_OUT = "";

    private static final String INSERT =
            "INSERT INTO correction (id, owner, act, was_act, sheet, entry, column_name, was, became, created_at,"
                    + " changed_at) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)";

    private Corrections() {}

    /** Keeps that an entry was taken out. */
    static void insertTakenOut(JdbcTemplate jdbc, By by, String act, String stamp, Entry seen) {
        jdbc.update(INSERT, row(by, act, stamp, seen, TAKEN_OUT, null, null));
    }

    private static Object[] row(
            By by, String act, String stamp, Entry seen, String column, @Nullable String was, @Nullable String became) {
        return new Object[] {
            RecordBook.newId(),
            by.owner(),
            act,
            seen.act(),
            seen.sheet().name(),
            seen.id(),
            column,
            was,
            became,
            stamp,
            stamp
        };
    }

    /** Keeps the old value of every column that changes. */
    static void insert(JdbcTemplate jdbc, By by, String act, String stamp, Entry seen, Map<String, String> values) {
        List<Object[]> rows = new ArrayList<>();
        for (String column : seen.sheet().columnNames()) {
            String was = seen.values().get(column);
            String becomes = values.get(column);
            if (!Objects.equals(was, becomes)) {
                rows.add(row(by, act, stamp, seen, column, was, becomes));
            }
        }
        jdbc.batchUpdate(INSERT, rows);
    }

    /**
     * Writes the new values.
     *
     * @throws ChangedSinceException if the entry is not as it was seen
     */
    static void update(JdbcTemplate jdbc, By by, String act, String stamp, Entry seen, Map<String, String> values) {
        int changed = jdbc.update(
                EntryRows.update(seen.sheet()),
                row -> EntryRows.bindUpdate(row, seen.sheet(), by, stamp, act, seen, values));
        if (changed != 1) {
            throw new ChangedSinceException("that entry was changed in the meantime");
        }
    }

    /** Every value of an entry that was replaced, newest first. */
    static List<Correction> list(JdbcTemplate jdbc, String owner, Sheet sheet, String id) {
        return jdbc.query(
                "SELECT c.*, a.who AS act_who, a.undone_by AS act_undone FROM correction c JOIN act a ON a.id = c.act"
                        + " WHERE c.owner = ? AND c.sheet = ? AND c.entry = ? AND c.column_name <> '' ORDER BY c.created_at DESC, c.id DESC",
                (row, number) -> new Correction(
                        Instant.parse(row.getString("created_at")),
                        row.getString("act_who"),
                        row.getString("column_name"),
                        Objects.requireNonNullElse(row.getString("was"), ""),
                        Objects.requireNonNullElse(row.getString("became"), ""),
                        row.getString("act_undone") != null),
                owner,
                sheet.name(),
                id);
    }
}
