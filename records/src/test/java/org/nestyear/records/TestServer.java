package org.nestyear.records;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.concurrent.atomic.AtomicInteger;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Assumptions;

/** A real PostgreSQL server, started once for all tests of a run and stopped with it. */
final class TestServer {
    private static final AtomicInteger SCHEMAS = new AtomicInteger();
    private static @Nullable EmbeddedPostgres server;

    private TestServer() {}

    /** Address of a schema of its own in which nothing is yet. Where no server can be had, the test is skipped. */
    static DatabaseAddress.OnServer freshSchema() {
        String schema = "keeper_" + SCHEMAS.incrementAndGet();
        run("CREATE SCHEMA " + schema);
        return address().with("currentSchema", schema);
    }

    /** Address of the database that every server has. */
    static DatabaseAddress.OnServer address() {
        return new DatabaseAddress.OnServer(running().getJdbcUrl("postgres", "postgres"), "postgres", null);
    }

    /** Does something as the server's owner. */
    static void run(String sql) {
        try (Connection connection = running().getPostgresDatabase().getConnection();
                Statement statement = connection.createStatement()) {
            statement.execute(sql);
        } catch (SQLException e) {
            throw new IllegalStateException(e);
        }
    }

    /** From now on a user of this name must tell a password; all others are let in without, as this server does. */
    static void askForPassword(String user) {
        try (Connection connection = running().getPostgresDatabase().getConnection();
                Statement statement = connection.createStatement()) {
            String file;
            try (ResultSet row = statement.executeQuery("SHOW hba_file")) {
                row.next();
                file = row.getString(1);
            }
            Path rules = Path.of(file);
            Files.writeString(rules, "host all " + user + " all scram-sha-256\n" + Files.readString(rules));
            statement.execute("SELECT pg_reload_conf()");
        } catch (SQLException | IOException e) {
            throw new IllegalStateException(e);
        }
    }

    private static synchronized EmbeddedPostgres running() {
        if (server == null) {
            boolean linux = System.getProperty("os.name").startsWith("Linux");
            Assumptions.assumeTrue(linux, "the server for tests is only had for Linux");
            try {
                server = EmbeddedPostgres.start();
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
        return server;
    }
}
