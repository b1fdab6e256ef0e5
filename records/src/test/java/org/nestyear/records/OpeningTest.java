package org.nestyear.records;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.flywaydb.core.api.MigrationInfo;
import org.flywaydb.core.api.MigrationState;
import org.junit.jupiter.api.Test;
import org.nestyear.records.UnreadableRecordsException.Reason;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.datasource.DriverManagerDataSource;

/** Records that cannot be opened are told in one sentence and left as they are, on both databases. */
class OpeningTest extends OnBothDatabases {
    @Test
    void theNewestVersionIsTheOneOfTheNewestMigrationFile() {
        MigrationInfo[] all = Database.flyway(source(), Sqlite.BYTES).info().all();
        assertThat(all[all.length - 1].getVersion()).hasToString(Integer.toString(Database.NEWEST));
        assertThat(all[all.length - 1].getState()).isEqualTo(MigrationState.SUCCESS);
    }

    @Test
    void recordsOfANewerVersionAreRefused() {
        String yes = kind == Kind.SQLITE ? "1" : "TRUE";
        run("INSERT INTO flyway_schema_history (installed_rank, version, description, type, script, checksum,"
                + " installed_by, execution_time, success)"
                + " VALUES (99, '99', 'later', 'SQL', 'V99__later.sql', 1, 'x', 1, " + yes + ")");
        assertRefusedAndUnchanged(Reason.NEWER, "(tables 99); expected tables " + Database.NEWEST + " or older.");
    }

    @Test
    void anInterruptedMigrationIsNotTakenForDone() {
        run("UPDATE flyway_schema_history SET success = " + (kind == Kind.SQLITE ? "0" : "FALSE"));
        assertRefusedAndUnchanged(Reason.UPDATE, "; expected all of it or nothing.");
    }

    @Test
    void aDatabaseOfAnotherProgramIsLeftAlone() {
        run("DROP TABLE season_file");
        run("DROP TABLE flyway_schema_history");
        assertRefusedAndUnchanged(Reason.FOREIGN, "expected an empty one or one that Nestyear made.");
    }

    private void assertRefusedAndUnchanged(Reason reason, String end) {
        Map<String, List<Map<String, Object>>> before = everything();
        assertThatThrownBy(this::reopen).isInstanceOfSatisfying(UnreadableRecordsException.class, e -> {
            assertThat(e.reason()).isEqualTo(reason);
            assertThat(e.sentence()).contains(address().words()).endsWith(end).hasLineCount(1);
        });
        assertThat(everything()).isNotEmpty().isEqualTo(before);
    }

    private Map<String, List<Map<String, Object>>> everything() {
        JdbcClient jdbc = fresh();
        String tables = kind == Kind.SQLITE
                ? "SELECT name FROM sqlite_master WHERE type = 'table'"
                : "SELECT table_name FROM information_schema.tables WHERE table_schema = current_schema()";
        TreeMap<String, List<Map<String, Object>>> all = new TreeMap<>();
        for (Object table : jdbc.sql(tables).query().singleColumn()) {
            all.put(table.toString(), jdbc.sql("SELECT * FROM " + table).query().listOfRows());
        }
        return all;
    }

    private void run(String sql) {
        fresh().sql(sql).update();
    }

    // A connection past the one that may be closed by now.
    private JdbcClient fresh() {
        String url = address() instanceof DatabaseAddress.OnServer server
                ? server.url()
                : Sqlite.url(folder.resolve(Database.FILE_NAME));
        return JdbcClient.create(new DriverManagerDataSource(url));
    }
}
