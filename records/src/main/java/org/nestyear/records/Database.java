package org.nestyear.records;

import java.nio.file.Path;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.FlywayException;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteDataSource;

/** The one SQLite file that holds a keeper's records: how to reach it and how to bring its tables up to date. */
public final class Database {
    /** Name of the file inside the keeper's data folder. */
    public static final String FILE_NAME = "nestyear.sqlite";

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
            migrate(source);
        } catch (FlywayException e) {
            throw new UnreadableRecordsException(file, e);
        }
        return source;
    }

    private static void migrate(DataSource source) {
        Flyway.configure()
                .dataSource(source)
                .locations("classpath:db/migration")
                .failOnMissingLocations(true)
                .load()
                .migrate();
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
