package org.nestyear.records.book;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.JdbcTemplate;

/**
 * Takes the changes of an act back, or does them again. An entry names the act that gave it the values it has now, and
 * does so again after later acts were taken back, so that acts can be taken back one after the other.
 */
final class UndoWork {
    private final JdbcTemplate jdbc;

    UndoWork(JdbcTemplate jdbc) {
        this.jdbc = jdbc;
    }

    /**
     * Takes an act back inside the caller's transaction: what it added goes, what it took out or corrected is as before.
     *
     * @return how many entries were touched
     * @throws ChangedSinceException if one of the entries was changed after the act, or is in use
     */
    int undo(By by, Act act, String undoId, String stamp) {
        int touched = 0;
        for (Sheet sheet : Sheets.list()) {
            for (Corrected entry : corrected(sheet, act)) {
                touched += rewrite(by, sheet, entry.id(), act.id(), entry.wasAct(), entry.was(), stamp);
            }
            touched += bringBack(sheet, act.id(), stamp);
            touched += jdbc.update(
                    "UPDATE " + sheet.name() + " SET removed_act = ?, changed_at = ?, revision = revision + 1"
                            + " WHERE added_act = ? AND act = ? AND removed_act IS NULL",
                    undoId,
                    stamp,
                    act.id(),
                    act.id());
        }
        checkWhole(by, act, touched, stamp);
        return touched;
    }

    /**
     * Does an act again that was taken back.
     *
     * @param undone the act that took it back
     * @return how many entries were touched
     * @throws ChangedSinceException if one of the entries was changed meanwhile
     */
    int redo(By by, Act act, Act undone, String stamp) {
        int touched = 0;
        for (Sheet sheet : Sheets.list()) {
            touched += bringBack(sheet, undone.id(), stamp);
            for (Corrected entry : corrected(sheet, act)) {
                touched += rewrite(by, sheet, entry.id(), entry.wasAct(), act.id(), entry.became(), stamp);
            }
            touched += jdbc.update(
                    "UPDATE " + sheet.name() + " SET removed_act = ?, changed_at = ?, revision = revision + 1"
                            + " WHERE removed_act IS NULL AND EXISTS (SELECT 1 FROM correction c WHERE c.act = ?"
                            + " AND c.sheet = ? AND c.entry = " + sheet.name() + ".id AND c.column_name = ?"
                            + " AND c.was_act = " + sheet.name() + ".act)",
                    act.id(),
                    stamp,
                    act.id(),
                    sheet.name(),
                    Corrections.TAKEN_OUT);
        }
        checkWhole(by, act, touched, stamp);
        return touched;
    }

    private record Corrected(
            String id, String wasAct, Map<String, @Nullable String> was, Map<String, @Nullable String> became) {}

    private List<Corrected> corrected(Sheet sheet, Act act) {
        Map<String, Corrected> entries = new LinkedHashMap<>();
        jdbc.query(
                "SELECT * FROM correction WHERE act = ? AND sheet = ? AND column_name <> ? ORDER BY entry",
                row -> {
                    Corrected entry = entries.computeIfAbsent(
                            row.getString("entry"), id -> new Corrected(id, "", new HashMap<>(), new HashMap<>()));
                    entry.was().put(row.getString("column_name"), row.getString("was"));
                    entry.became().put(row.getString("column_name"), row.getString("became"));
                    entries.put(
                            entry.id(),
                            new Corrected(entry.id(), row.getString("was_act"), entry.was(), entry.became()));
                },
                act.id(),
                sheet.name(),
                Corrections.TAKEN_OUT);
        return List.copyOf(entries.values());
    }

    // 1 if the entry had the act it was expected to have, else 0.
    private int rewrite(
            By by,
            Sheet sheet,
            String id,
            String expectedAct,
            String act,
            Map<String, @Nullable String> columns,
            String stamp) {
        List<Entry> found = jdbc.query(
                "SELECT * FROM " + sheet.name() + " WHERE id = ? AND owner = ? AND act = ? AND removed_act IS NULL",
                (row, number) -> EntryRows.read(sheet, row),
                id,
                by.owner(),
                expectedAct);
        if (found.isEmpty()) {
            return 0;
        }
        Entry now = found.get(0);
        Map<String, String> values = new HashMap<>(now.values());
        columns.forEach((column, value) -> {
            if (value == null) {
                values.remove(column);
            } else {
                values.put(column, value);
            }
        });
        Corrections.update(jdbc, by, act, stamp, now, values);
        return 1;
    }

    private int bringBack(Sheet sheet, String removedBy, String stamp) {
        return jdbc.update(
                "UPDATE " + sheet.name() + " SET removed_act = NULL, changed_at = ?, revision = revision + 1"
                        + " WHERE removed_act = ?",
                stamp,
                removedBy);
    }

    private void checkWhole(By by, Act act, int touched, String stamp) {
        if (touched < act.entries()) {
            throw new ChangedSinceException("\"" + act.words()
                    + "\" cannot be taken back any more, because an entry of it was changed later; take that later"
                    + " change back first");
        }
        for (Sheet sheet : Sheets.list()) {
            for (Column column : sheet.columns()) {
                if (column.kind() == ColumnKind.LINK) {
                    checkLink(by.owner(), sheet, column, act, stamp);
                }
            }
        }
    }

    // No living entry may hang on one that is gone. Only what was touched just now can do so.
    private void checkLink(String owner, Sheet sheet, Column column, Act act, String stamp) {
        Integer broken = jdbc.queryForObject(
                "SELECT count(*) FROM " + sheet.name() + " s JOIN " + column.linkTo() + " t ON t.id = s."
                        + column.name() + " WHERE s.owner = ? AND s.removed_act IS NULL"
                        + " AND t.removed_act IS NOT NULL AND (s.changed_at = ? OR t.changed_at = ?)",
                Integer.class,
                owner,
                stamp,
                stamp);
        if (broken != null && broken > 0) {
            throw new ChangedSinceException("\"" + act.words() + "\" cannot be taken back: " + broken + " under "
                    + sheet.title() + " would be left without their "
                    + Sheets.get(column.linkTo()).title().toLowerCase(Locale.ROOT));
        }
    }
}
