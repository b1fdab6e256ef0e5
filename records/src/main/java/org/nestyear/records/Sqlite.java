package org.nestyear.records;

import com.zaxxer.hikari.HikariDataSource;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import javax.sql.DataSource;
import org.jspecify.annotations.Nullable;
import org.nestyear.records.UnreadableRecordsException.Reason;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteDataSource;

/** Records in one SQLite file. */
final class Sqlite {
    /** Its type of a column of bytes. */
    static final String BYTES = "BLOB";

    private static final int BUSY_MILLISECONDS = 5000;
    private static final int MOST_CONNECTIONS = 32;
    private static final int CACHE_KILOBYTES = 32_000;

    private Sqlite() {}

    static OpenDatabase open(DatabaseAddress.InFolder address) {
        checkWritable(address);
        Runnable hold = hold(address);
        HikariDataSource source = pool(address.file());
        try {
            Optional<SchemaState> state = SqliteFile.inspect(address.file());
            state.ifPresent(found -> found.check(address.words()));
            // Flyway takes as long to load as everything else about the records together, and at nearly every start it
            // would only find that there is nothing to do. Whatever is not exactly the newest is left to it to judge.
            if (state.isEmpty() || !state.get().isNewest()) {
                FolderLock.inTurn(address.folder(), () -> bringUpToDate(address, source));
            }
            return new OpenDatabase(address, source, () -> {
                source.close();
                hold.run();
            });
        } catch (RuntimeException e) {
            source.close();
            hold.run();
            throw e;
        }
    }

    // Looked at once more, because another program may have done it meanwhile. Older records are copied first: their
    // tables are only ever brought forward.
    private static Optional<SchemaState> bringUpToDate(DatabaseAddress.InFolder address, DataSource source) {
        Optional<SchemaState> state = SqliteFile.inspect(address.file());
        state.ifPresent(found -> found.check(address.words()));
        if (state.isEmpty() || !state.get().isNewest()) {
            state.filter(found -> found.version() > 0)
                    .ifPresent(found -> SqliteCopy.make(
                            address.file(), Backups.beforeTables(address.folder(), Database.NEWEST), true));
            Database.migrate(source, address.words(), BYTES);
        }
        return state;
    }

    private static Runnable hold(DatabaseAddress.InFolder address) {
        try {
            return FolderLock.use(address.folder())
                    .orElseThrow(() -> new UnreadableRecordsException(
                            Reason.IN_USE,
                            "the records in " + address.words() + " are being replaced by another program just now;"
                                    + " expected nobody else to hold them.",
                            "Maybe try again in a minute.",
                            null));
        } catch (UncheckedIOException e) {
            throw readOnly(address, e);
        }
    }

    private static void checkWritable(DatabaseAddress.InFolder address) {
        Path file = address.file();
        boolean usable = Files.isDirectory(address.folder())
                && Files.isWritable(address.folder())
                && (!Files.exists(file) || (Files.isReadable(file) && Files.isWritable(file)));
        if (!usable) {
            throw readOnly(address, null);
        }
    }

    static UnreadableRecordsException readOnly(DatabaseAddress.InFolder address, @Nullable Throwable cause) {
        return new UnreadableRecordsException(
                Reason.READ_ONLY,
                "the records in " + address.words()
                        + " may not be written by you; expected a file and a folder that you may write.",
                "Maybe another user owns them, or the disk is read-only.",
                cause);
    }

    // To open a connection costs more than most questions, and to close the last one makes SQLite empty its log into
    // the
    // file. One thread may hold two at once, so there are many more than threads that write.
    private static HikariDataSource pool(Path file) {
        SQLiteDataSource source = new SQLiteDataSource(settings());
        source.setUrl(url(file));
        HikariDataSource pool = new HikariDataSource();
        pool.setPoolName("records-file");
        pool.setDataSource(source);
        pool.setMaximumPoolSize(MOST_CONNECTIONS);
        pool.setMinimumIdle(0);
        return pool;
    }

    static String url(Path file) {
        return "jdbc:sqlite:" + file;
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
        // Ids are in no order, so a long import touches pages all over its indexes; the two megabytes that SQLite keeps
        // unless told are too few.
        config.setCacheSize(-CACHE_KILOBYTES);
        return config;
    }
}
