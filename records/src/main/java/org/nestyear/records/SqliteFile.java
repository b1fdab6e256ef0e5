package org.nestyear.records;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.nestyear.records.UnreadableRecordsException.Reason;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;

/** Looks into an SQLite file and never changes a row of it. */
final class SqliteFile {
    // The first sixteen bytes of every SQLite file: https://www.sqlite.org/fileformat2.html#magic_header_string
    private static final byte[] HEADER = "SQLite format 3\0".getBytes(StandardCharsets.US_ASCII);

    private static final int BUSY_MILLISECONDS = 5000;

    private SqliteFile() {}

    /**
     * What is in a file that was read through.
     *
     * @param tables version of its tables
     * @param rows rows of every table of records by its name
     */
    record Contents(int tables, Map<String, Long> rows) {}

    /**
     * How far its tables are.
     *
     * @return empty when nothing is in the file yet, or it is not there
     * @throws UnreadableRecordsException if it is no database, damaged, or another program's
     */
    static Optional<SchemaState> inspect(Path file) {
        return inspect(file, file);
    }

    /** As {@link #inspect(Path)}, for a file that the keeper knows by another name. */
    private static Optional<SchemaState> inspect(Path file, Path shown) {
        if (!Files.exists(file) || isEmpty(file)) {
            return Optional.empty();
        }
        checkHeader(file, shown);
        try (Connection connection = readOnly(file)) {
            // SQLite fills a page that is cut off with zeros, and takes a file cut off in its first page for an empty
            // one.
            if (!hasLog(file) && Files.size(file) % count(connection, "PRAGMA page_size") != 0) {
                throw damaged(shown, null);
            }
            if (hasHistory(connection)) {
                return Optional.of(SchemaState.read(connection));
            }
            if (count(connection, "SELECT count(*) FROM sqlite_master") > 0) {
                throw Database.foreign(shown.toString(), null);
            }
            return Optional.empty();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (SQLException e) {
            throw refusal(shown, e);
        }
    }

    /**
     * Reads all of it and checks what can be checked: every page, every index, every reference between tables, the version.
     *
     * @param shown the name by which the keeper knows it
     * @throws UnreadableRecordsException if anything is wrong with it
     */
    static Contents verify(Path file, Path shown) {
        if (!Files.isRegularFile(file)) {
            throw new UnreadableRecordsException(
                    Reason.MISSING, "there is no file " + shown + "; expected a copy of the records.", "", null);
        }
        SchemaState state = inspect(file, shown).orElseThrow(() -> notRecords(shown, null));
        state.check(shown.toString());
        try (Connection connection = readOnly(file);
                Statement statement = connection.createStatement()) {
            if (!isWhole(statement)) {
                throw damaged(shown, null);
            }
            return new Contents(state.version(), rows(connection));
        } catch (SQLException e) {
            throw refusal(shown, e);
        }
    }

    // https://www.sqlite.org/pragma.html#pragma_integrity_check: one row "ok"; the check of references has a row a
    // fault.
    private static boolean isWhole(Statement statement) throws SQLException {
        try (ResultSet row = statement.executeQuery("PRAGMA integrity_check(1)")) {
            if (!row.next() || !"ok".equals(row.getString(1))) {
                return false;
            }
        }
        try (ResultSet row = statement.executeQuery("PRAGMA foreign_key_check")) {
            return !row.next();
        }
    }

    private static Map<String, Long> rows(Connection connection) throws SQLException {
        Map<String, Long> rows = new LinkedHashMap<>();
        try (Statement statement = connection.createStatement();
                ResultSet row = statement.executeQuery("SELECT name FROM sqlite_master WHERE type = 'table'"
                        + " AND name NOT LIKE 'sqlite\\_%' ESCAPE '\\' AND name <> '" + SchemaState.HISTORY
                        + "' ORDER BY name")) {
            while (row.next()) {
                rows.put(row.getString(1), 0L);
            }
        }
        for (Map.Entry<String, Long> table : rows.entrySet()) {
            table.setValue(count(connection, "SELECT count(*) FROM \"" + table.getKey() + "\""));
        }
        return rows;
    }

    private static boolean hasHistory(Connection connection) throws SQLException {
        return count(
                        connection,
                        "SELECT count(*) FROM sqlite_master WHERE type = 'table' AND name = '" + SchemaState.HISTORY
                                + "'")
                > 0;
    }

    private static long count(Connection connection, String sql) throws SQLException {
        try (Statement statement = connection.createStatement();
                ResultSet row = statement.executeQuery(sql)) {
            return row.next() ? row.getLong(1) : 0;
        }
    }

    private static Connection readOnly(Path file) throws SQLException {
        SQLiteConfig config = new SQLiteConfig();
        config.setReadOnly(true);
        config.setBusyTimeout(BUSY_MILLISECONDS);
        Connection connection = config.createConnection(Sqlite.url(file));
        try (Statement statement = connection.createStatement()) {
            statement.execute("SELECT count(*) FROM sqlite_master");
            return connection;
        } catch (SQLException e) {
            connection.close();
            if (e instanceof SQLiteException sqlite
                    && sqlite.getResultCode().name().startsWith("SQLITE_READONLY")) {
                // A program that was killed left a write half done, which SQLite takes back when it may.
                return writing(file);
            }
            throw e;
        }
    }

    private static Connection writing(Path file) throws SQLException {
        SQLiteConfig config = new SQLiteConfig();
        config.setBusyTimeout(BUSY_MILLISECONDS);
        return config.createConnection(Sqlite.url(file));
    }

    /** Folds what the file's log still holds into the file itself, so that the file alone is all of it. */
    static void settle(Path file) throws SQLException {
        try (Connection connection = writing(file);
                Statement statement = connection.createStatement()) {
            statement.execute("PRAGMA wal_checkpoint(TRUNCATE)");
        }
    }

    // Of a write that is not yet in the file, or was broken off and will be made good from there.
    private static boolean hasLog(Path file) throws IOException {
        for (String companion : List.of("-wal", "-journal")) {
            Path log = file.resolveSibling(file.getFileName() + companion);
            if (Files.exists(log) && Files.size(log) > 0) {
                return true;
            }
        }
        return false;
    }

    private static boolean isEmpty(Path file) {
        try {
            return Files.isRegularFile(file) && Files.size(file) == 0;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void checkHeader(Path file, Path shown) {
        if (!Files.isRegularFile(file)) {
            throw notRecords(shown, null);
        }
        try (InputStream in = Files.newInputStream(file)) {
            if (!Arrays.equals(in.readNBytes(HEADER.length), HEADER)) {
                throw notRecords(shown, null);
            }
        } catch (IOException e) {
            throw notRecords(shown, e);
        }
    }

    static UnreadableRecordsException refusal(Path file, SQLException e) {
        if (e instanceof SQLiteException sqlite) {
            SQLiteErrorCode code = sqlite.getResultCode();
            if (code == SQLiteErrorCode.SQLITE_NOTADB) {
                return notRecords(file, e);
            }
            if (code == SQLiteErrorCode.SQLITE_BUSY) {
                return new UnreadableRecordsException(
                        Reason.IN_USE,
                        "the records in " + file + " are held by another program for more than five seconds; expected"
                                + " a free moment.",
                        "Maybe try again in a minute.",
                        e);
            }
        }
        return damaged(file, e);
    }

    private static UnreadableRecordsException notRecords(Path file, @Nullable Throwable cause) {
        return new UnreadableRecordsException(
                Reason.FOREIGN,
                "the file " + file + " is no database; expected the records that Nestyear keeps (an SQLite file).",
                "",
                cause);
    }

    private static UnreadableRecordsException damaged(Path file, @Nullable Throwable cause) {
        return new UnreadableRecordsException(
                Reason.DAMAGED,
                "the records in " + file + " are damaged; expected an SQLite file that is whole.",
                "Maybe bring back the newest copy of the folder " + Backups.FOLDER_NAME
                        + " beside them: nestyear restore FILE.",
                cause);
    }
}
