package org.nestyear.records;

import java.nio.file.Path;
import java.util.Map;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.CoreErrorCode;
import org.flywaydb.core.api.FlywayException;
import org.jspecify.annotations.Nullable;
import org.nestyear.records.UnreadableRecordsException.Reason;

/** Opens a keeper's records, wherever they are, and brings their tables up to date. */
public final class Database {
    /** Name of the SQLite file inside the keeper's data folder. */
    public static final String FILE_NAME = "nestyear.sqlite";

    /** Version of the newest migration; a test holds it to the files. */
    public static final int NEWEST = 2;

    private Database() {}

    /**
     * Opens the SQLite file of a folder that exists, for as long as the program runs.
     *
     * @throws UnreadableRecordsException as {@link #open(DatabaseAddress)}
     */
    public static DataSource open(Path folder) {
        return open(new DatabaseAddress.InFolder(folder)).source();
    }

    /**
     * Opens the records at an address, making their tables or bringing them up to date.
     *
     * @throws UnreadableRecordsException if they are damaged, foreign, from a newer version, in other hands or out of
     *     reach; nothing has been changed then
     */
    public static OpenDatabase open(DatabaseAddress address) {
        if (address instanceof DatabaseAddress.OnServer server) {
            return Postgres.open(server);
        }
        return Sqlite.open((DatabaseAddress.InFolder) address);
    }

    /**
     * Makes the tables or brings them up to date.
     *
     * @param where the database in words for a message
     * @param bytes this database's type of a column of bytes
     */
    static void migrate(DataSource source, String where, String bytes) {
        try {
            flyway(source, bytes).migrate();
        } catch (FlywayException e) {
            if (e.getErrorCode() == CoreErrorCode.NON_EMPTY_SCHEMA_WITHOUT_SCHEMA_HISTORY_TABLE) {
                throw foreign(where, e);
            }
            throw new UnreadableRecordsException(
                    Reason.UPDATE,
                    "the tables of the records in " + where
                            + " cannot be brought up to date; expected what this version of Nestyear or an earlier one"
                            + " left there.",
                    "",
                    e);
        }
    }

    static Flyway flyway(DataSource source, String bytes) {
        return Flyway.configure()
                .dataSource(source)
                .locations("classpath:db/migration")
                .placeholders(Map.of("bytes", bytes))
                .failOnMissingLocations(true)
                // By default records of a newer version would be taken as they are.
                .ignoreMigrationPatterns(new String[0])
                .load();
    }

    static UnreadableRecordsException foreign(String where, @Nullable Throwable cause) {
        return new UnreadableRecordsException(
                Reason.FOREIGN,
                "the database " + where + " holds tables of another program; expected an empty one or one that Nestyear"
                        + " made.",
                "",
                cause);
    }
}
