package org.nestyear.records.book;

import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Types;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** The statements that write and read the rows of one table. Names come from {@link Sheets}, never from a user. */
final class EntryRows {
    /** Columns that every table has before its own. */
    static final List<String> KEPT =
            List.of("id", "owner", "who", "created_at", "changed_at", "revision", "added_act", "act", "removed_act");

    private EntryRows() {}

    static String insert(Sheet sheet) {
        int columns = KEPT.size() + sheet.columns().size();
        return "INSERT INTO " + sheet.name() + " (" + String.join(", ", KEPT) + ", "
                + String.join(", ", sheet.columnNames()) + ") VALUES (?" + ", ?".repeat(columns - 1) + ")";
    }

    /** Sets the values of {@link #insert}. */
    static void bindInsert(PreparedStatement row, Sheet sheet, NewRow added) throws SQLException {
        int at = 1;
        row.setString(at++, added.id());
        row.setString(at++, added.by().owner());
        row.setString(at++, added.by().who());
        row.setString(at++, added.stamp());
        row.setString(at++, added.stamp());
        row.setInt(at++, 1);
        row.setString(at++, added.act());
        row.setString(at++, added.act());
        row.setNull(at++, Types.VARCHAR);
        bindValues(row, at, sheet, added.values());
    }

    /** An entry that is to be written for the first time. */
    record NewRow(String id, By by, String stamp, String act, Map<String, String> values) {}

    static String update(Sheet sheet) {
        String columns = sheet.columnNames().stream().map(c -> c + " = ?").collect(Collectors.joining(", "));
        return "UPDATE " + sheet.name() + " SET " + columns
                + ", who = ?, changed_at = ?, act = ?, revision = revision + 1"
                + " WHERE id = ? AND owner = ? AND revision = ? AND removed_act IS NULL";
    }

    /** Sets the values of {@link #update}. */
    static void bindUpdate(
            PreparedStatement row, Sheet sheet, By by, String stamp, String act, Entry seen, Map<String, String> values)
            throws SQLException {
        int at = bindValues(row, 1, sheet, values);
        row.setString(at++, by.who());
        row.setString(at++, stamp);
        row.setString(at++, act);
        row.setString(at++, seen.id());
        row.setString(at++, by.owner());
        row.setInt(at, seen.revision());
    }

    private static int bindValues(PreparedStatement row, int first, Sheet sheet, Map<String, String> values)
            throws SQLException {
        int at = first;
        for (Column column : sheet.columns()) {
            bind(row, at++, column, values.get(column.name()));
        }
        return at;
    }

    static void bind(PreparedStatement row, int at, Column column, @Nullable String value) throws SQLException {
        switch (column.kind()) {
            case WHOLE -> {
                if (value == null) {
                    row.setNull(at, Types.INTEGER);
                } else {
                    row.setInt(at, Integer.parseInt(value));
                }
            }
            case YES_NO -> {
                if (value == null) {
                    row.setNull(at, Types.INTEGER);
                } else {
                    row.setInt(at, value.equals("yes") ? 1 : 0);
                }
            }
            case NUMBER -> {
                if (value == null) {
                    row.setNull(at, Types.DOUBLE);
                } else {
                    row.setDouble(at, Double.parseDouble(value));
                }
            }
            default -> row.setString(at, value);
        }
    }

    /** The entry in the current row. */
    static Entry read(Sheet sheet, ResultSet row) throws SQLException {
        Map<String, String> values = new LinkedHashMap<>();
        for (Column column : sheet.columns()) {
            String value = read(column, row);
            if (value != null) {
                values.put(column.name(), value);
            }
        }
        return new Entry(
                sheet,
                row.getString("id"),
                row.getInt("revision"),
                row.getString("who"),
                Instant.parse(row.getString("created_at")),
                Instant.parse(row.getString("changed_at")),
                row.getString("removed_act") != null,
                row.getString("act"),
                values);
    }

    /** Ids and some columns of the entries of an owner. */
    static String select(Sheet sheet, List<String> columns) {
        return "SELECT id, " + String.join(", ", columns) + " FROM " + sheet.name()
                + " WHERE owner = ? AND removed_act IS NULL ORDER BY created_at, id";
    }

    /** What some columns of the current row tell. */
    static Map<String, String> values(List<Column> columns, ResultSet row) throws SQLException {
        Map<String, String> values = new LinkedHashMap<>();
        for (Column column : columns) {
            String value = read(column, row);
            if (value != null) {
                values.put(column.name(), value);
            }
        }
        return values;
    }

    static @Nullable String read(Column column, ResultSet row) throws SQLException {
        return switch (column.kind()) {
            case WHOLE -> {
                int value = row.getInt(column.name());
                yield row.wasNull() ? null : Integer.toString(value);
            }
            case YES_NO -> {
                int value = row.getInt(column.name());
                yield row.wasNull() ? null : value == 1 ? "yes" : "no";
            }
            case NUMBER -> {
                double value = row.getDouble(column.name());
                yield row.wasNull() ? null : Column.shortest(value);
            }
            default -> row.getString(column.name());
        };
    }

    /** All tables whose entries link to this one, each with the column that does. */
    static List<Map.Entry<Sheet, Column>> linksTo(Sheet sheet) {
        List<Map.Entry<Sheet, Column>> links = new ArrayList<>();
        for (Sheet other : Sheets.list()) {
            for (Column column : other.columns()) {
                if (column.kind() == ColumnKind.LINK && column.linkTo().equals(sheet.name())) {
                    links.add(Map.entry(other, column));
                }
            }
        }
        return links;
    }
}
