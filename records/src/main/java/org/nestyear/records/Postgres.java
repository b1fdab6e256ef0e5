package org.nestyear.records;

import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.HikariDataSource;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Optional;
import java.util.Properties;
import org.jspecify.annotations.Nullable;
import org.nestyear.records.UnreadableRecordsException.Reason;

/** Records on a PostgreSQL server, through a pool of connections. */
final class Postgres {
    /** Its type of a column of bytes. */
    static final String BYTES = "BYTEA";

    private static final int MOST_CONNECTIONS = 8;
    private static final String CONNECT_SECONDS = "10";

    private Postgres() {}

    static OpenDatabase open(DatabaseAddress.OnServer address) {
        Optional<SchemaState> state = inspect(address);
        state.ifPresent(found -> found.check(address.words()));
        HikariDataSource pool = new HikariDataSource(settings(address));
        OneWriter source = new OneWriter(pool);
        try {
            if (state.isEmpty() || !state.get().isNewest()) {
                Database.migrate(pool, address.words(), BYTES);
            }
        } catch (RuntimeException e) {
            pool.close();
            throw e;
        }
        return new OpenDatabase(address, source, pool::close);
    }

    private static HikariConfig settings(DatabaseAddress.OnServer address) {
        HikariConfig config = new HikariConfig();
        config.setPoolName("records");
        config.setJdbcUrl(address.url());
        config.setUsername(address.user());
        config.setPassword(address.password());
        config.setMaximumPoolSize(MOST_CONNECTIONS);
        config.setMinimumIdle(1);
        return config;
    }

    // One plain connection first: what it fails with can be told in words, and nothing has been started by then.
    private static Optional<SchemaState> inspect(DatabaseAddress.OnServer address) {
        Properties properties = new Properties();
        put(properties, "user", address.user());
        put(properties, "password", address.password());
        properties.setProperty("connectTimeout", CONNECT_SECONDS);
        try (Connection connection = DriverManager.getConnection(address.url(), properties)) {
            return hasHistory(connection) ? Optional.of(SchemaState.read(connection)) : Optional.empty();
        } catch (SQLException e) {
            throw refusal(address, e);
        }
    }

    private static boolean hasHistory(Connection connection) throws SQLException {
        try (Statement statement = connection.createStatement();
                ResultSet row = statement.executeQuery(
                        "SELECT to_regclass(current_schema() || '." + SchemaState.HISTORY + "') IS NOT NULL")) {
            return row.next() && row.getBoolean(1);
        }
    }

    private static void put(Properties properties, String name, @Nullable String value) {
        if (value != null) {
            properties.setProperty(name, value);
        }
    }

    // The driver's exception is no cause of ours: its words may quote the address with a password.
    private static UnreadableRecordsException refusal(DatabaseAddress.OnServer address, SQLException e) {
        String state = String.valueOf(e.getSQLState());
        String where = address.words();
        if (state.startsWith("28")) {
            return new UnreadableRecordsException(
                    Reason.SERVER,
                    "the server of " + where + " does not let "
                            + (address.user() == null ? "the user" : "the user \"" + address.user() + "\"")
                            + " in; expected a user and a password that it knows.",
                    "Maybe set NESTYEAR_DATABASE_USER and NESTYEAR_DATABASE_PASSWORD.",
                    null);
        }
        if (state.equals("3D000")) {
            return new UnreadableRecordsException(
                    Reason.SERVER,
                    "the server has no database " + where + "; expected one that is there, and may be empty.",
                    "Maybe make it first: createdb NAME.",
                    null);
        }
        if (state.startsWith("08") || state.startsWith("57P")) {
            return new UnreadableRecordsException(
                    Reason.SERVER,
                    "no PostgreSQL server answers at " + where + "; expected one that is running and may be reached"
                            + " from here.",
                    "Maybe the host or the port is another, or the server has not been started.",
                    null);
        }
        return new UnreadableRecordsException(
                Reason.SERVER,
                "the database " + where + " cannot be read (PostgreSQL says " + state
                        + "); expected one whose tables this user may read and write.",
                "",
                null);
    }
}
