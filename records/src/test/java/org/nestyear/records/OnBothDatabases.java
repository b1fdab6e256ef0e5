package org.nestyear.records;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import javax.sql.DataSource;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.Parameter;
import org.junit.jupiter.params.ParameterizedClass;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.jdbc.core.simple.JdbcClient;

/**
 * Tests that run twice: on an SQLite file and on a real PostgreSQL server. Every test gets records of its own in which
 * nothing is yet. A subclass has only tests, and asks {@link #source()}.
 */
@ParameterizedClass(name = "{0}")
@EnumSource(OnBothDatabases.Kind.class)
public abstract class OnBothDatabases {
    /** The two databases. */
    public enum Kind {
        SQLITE,
        POSTGRESQL
    }

    @Parameter
    protected Kind kind = Kind.SQLITE;

    @TempDir
    protected Path folder;

    private OpenDatabase open;

    @BeforeEach
    final void openRecords() {
        open = Database.open(kind == Kind.SQLITE ? new DatabaseAddress.InFolder(folder) : TestServer.freshSchema());
    }

    @AfterEach
    final void closeRecords() {
        open.close();
    }

    /** The records of this test. */
    protected final DataSource source() {
        return open.source();
    }

    /** Closes the records and opens them again, as another start of the program does. */
    protected final void reopen() {
        open.close();
        open = Database.open(open.address());
    }

    /** Where the records of this test are. */
    protected final DatabaseAddress address() {
        return open.address();
    }

    @Test
    final void theDatabaseAskedForIsTheOneThatAnswers() {
        String asked = kind == Kind.SQLITE ? "SELECT 'SQLite ' || sqlite_version()" : "SELECT version()";
        Object answer = JdbcClient.create(source()).sql(asked).query().singleValue();
        assertThat(answer.toString()).startsWith(kind == Kind.SQLITE ? "SQLite 3." : "PostgreSQL ");
    }
}
