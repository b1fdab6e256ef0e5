package org.nestyear.records;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Map;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.FlywayException;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteDataSource;

/** The one SQLite file that holds a keeper's records: how to reach it and how to bring its tables up to date. */
public final class Database {
    /** Name of the file inside the keeper's data folder. */
    public static final String FILE_NAME = "nestyear.sqlite";

    /** Version of the newest tables. */
    public static final String NEWEST = "2";

    private static final int BUSY_MILLISECONDS = 5000;

    private Database() {}

    /**
     * Opens the records in a folder that exists, making or bringing up to date the tables.
     *
     * @throws UnreadableRecordsException if the file is no database, is from a newer version, or cannot be written
     */
    public static DataSource open(Path folder) {
        SQLiteDataSource source = new SQLiteDataSource(settings());
        Path file = folder.resolve(FILE_NAME).toAbsolutePath();
        source.setUrl("jdbc:sqlite:" + file);
        try {
            if (!isUpToDate(source)) {
                flyway(source).migrate();
            }
        } catch (FlywayException e) {
            throw new UnreadableRecordsException(file, e);
        }
        return source;
    }

    // Flyway takes as long to load as everything else about the records together, and at nearly every start it would
    // only
    // find that there is nothing to do. Whatever is not exactly the newest known state is left to it to judge.
    private static boolean isUpToDate(DataSource source) {
        try (Connection connection = source.getConnection();
                Statement statement = connection.createStatement();
                ResultSet history = statement.executeQuery(
                        "SELECT version, success FROM flyway_schema_history ORDER BY installed_rank DESC LIMIT 1")) {
            return history.next() && NEWEST.equals(history.getString(1)) && history.getBoolean(2);
        } catch (SQLException e) {
            return false;
        }
    }

    static Flyway flyway(DataSource source) {
        return Flyway.configure()
                .dataSource(source)
                .locations("classpath:db/migration")
                .failOnMissingLocations(true)
                .placeholders(Map.of("bytes", "BLOB"))
                // By default records of a newer version would be taken as they are.
                .ignoreMigrationPatterns(new String[0])
                .load();
    }

    // An acknowledged entry survives a power cut (synchronous FULL). Read-then-write transactions take the write lock
    // at
    // their start (IMMEDIATE); otherwise two of them at once can fail with a stale snapshot in WAL mode.
    private static SQLiteConfig settings() {
        SQLiteConfig config = new SQLiteConfig();
        config.setJournalMode(SQLiteConfig.JournalMode.WAL);
        config.setSynchronous(SQLiteConfig.SynchronousMode.FULL);
        config.setTransactionMode(SQLiteConfig.TransactionMode.IMMEDIATE);
        config.setBusyTimeout(BUSY_MILLISECONDS);
        config.enforceForeignKeys(true);
        return config;
    }
}
