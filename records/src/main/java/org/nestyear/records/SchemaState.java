package org.nestyear.records;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import org.jspecify.annotations.Nullable;
import org.nestyear.records.UnreadableRecordsException.Reason;

/**
 * How far the tables of a database are.
 *
 * @param version number of the newest migration that was run, 0 when there was none
 * @param whole whether every migration that was begun was also finished
 */
public record SchemaState(int version, boolean whole) {
    /** Name of the table in which the migration library keeps its history. */
    public static final String HISTORY = "flyway_schema_history";

    /**
     * Reads it; the history must be there.
     *
     * @throws SQLException if it cannot be read
     */
    static SchemaState read(Connection connection) throws SQLException {
        try (Statement statement = connection.createStatement();
                ResultSet row = statement.executeQuery("SELECT version, success FROM " + HISTORY)) {
            int newest = 0;
            boolean whole = true;
            while (row.next()) {
                newest = Math.max(newest, number(row.getString(1)));
                whole &= row.getBoolean(2);
            }
            return new SchemaState(newest, whole);
        }
    }

    /** Whether nothing need be done. */
    boolean isNewest() {
        return whole && version == Database.NEWEST;
    }

    /**
     * @param where the database in words for a message
     * @throws UnreadableRecordsException if this version of the program cannot go on from here
     */
    void check(String where) {
        if (version > Database.NEWEST) {
            throw new UnreadableRecordsException(
                    Reason.NEWER,
                    "the records in " + where + " are from a newer version of Nestyear (tables " + version
                            + "); expected tables " + Database.NEWEST + " or older.",
                    "Maybe start the newer version again: nothing has been changed.",
                    null);
        }
        if (!whole) {
            throw new UnreadableRecordsException(
                    Reason.UPDATE,
                    "the tables of the records in " + where
                            + " were left half brought up to date; expected all of it or nothing.",
                    "Maybe bring back the copy made before: see nestyear restore --help.",
                    null);
        }
    }

    private static int number(@Nullable String version) throws SQLException {
        try {
            return version == null ? 0 : Integer.parseInt(version);
        } catch (NumberFormatException e) {
            throw new SQLException("the version \"" + version + "\" is no whole number", e);
        }
    }
}
