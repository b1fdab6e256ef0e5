package org.nestyear.records;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.MigrationVersion;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.nestyear.core.season.Goal;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.datasource.DriverManagerDataSource;

/**
 * Records of every earlier version still open, with every row. {@code schema/vN.sqlite} was written by the code of version
 * N and is never made anew; its rows are invented. On PostgreSQL the same rows stand in tables of that version.
 */
class ReleasedSchemaTest {
    private static final Path FIXTURES = Path.of("src/test/resources/schema");

    @Test
    void everyEarlierVersionHasAFile() {
        assertThat(IntStream.range(1, Database.NEWEST))
                .isNotEmpty()
                .allSatisfy(version -> assertThat(fixture(version)).isRegularFile());
    }

    @Test
    void version1OpensInSqliteWithEveryRowAndACopyAsItWas(@TempDir Path folder) throws Exception {
        Files.copy(fixture(1), folder.resolve(Database.FILE_NAME));
        try (OpenDatabase open = Database.open(new DatabaseAddress.InFolder(folder))) {
            assertSeasonsOfVersion1(open);
            assertThat(SchemaState.read(open.source().getConnection()))
                    .isEqualTo(new SchemaState(Database.NEWEST, true));
        }
        Path before = Backups.beforeTables(folder, Database.NEWEST);
        assertThat(before).isRegularFile();
        JdbcClient copy = JdbcClient.create(new DriverManagerDataSource(Sqlite.url(before)));
        assertThat(copy.sql("SELECT max(version) FROM flyway_schema_history")
                        .query(String.class)
                        .single())
                .isEqualTo("1");
        assertThat(copy.sql("SELECT count(*) FROM season").query(Integer.class).single())
                .isEqualTo(4);
    }

    @Test
    void version1OpensOnPostgresWithEveryRow() throws Exception {
        DatabaseAddress.OnServer address = TestServer.freshSchema();
        DriverManagerDataSource server = new DriverManagerDataSource(address.url());
        Flyway.configure()
                .configuration(Database.flyway(server, Postgres.BYTES).getConfiguration())
                .target(MigrationVersion.fromVersion("1"))
                .load()
                .migrate();
        JdbcClient from = JdbcClient.create(new DriverManagerDataSource(Sqlite.url(fixture(1))));
        for (String table : List.of("season", "season_file")) {
            for (Map<String, Object> row :
                    from.sql("SELECT * FROM " + table).query().listOfRows()) {
                JdbcClient.create(server)
                        .sql("INSERT INTO " + table + " (" + String.join(", ", row.keySet()) + ") VALUES ("
                                + String.join(", ", Collections.nCopies(row.size(), "?")) + ")")
                        .params(new ArrayList<>(row.values()))
                        .update();
            }
        }
        try (OpenDatabase open = Database.open(address)) {
            assertSeasonsOfVersion1(open);
        }
    }

    private static void assertSeasonsOfVersion1(OpenDatabase open) {
        SeasonShelf shelf = new SeasonShelf(open.source(), Instant::now);
        assertThat(shelf.list("keeper"))
                .extracting(SeasonSummary::fileName)
                .containsExactly("plum.toml", "orchard.toml", "tansy-lane.toml");
        StoredSeason plum = shelf.findCurrent("keeper").orElseThrow();
        assertThat(plum.source())
                .isEqualTo(new SeasonSource.Uploaded(
                        "plum.toml",
                        "format = 1\n# Zwetschgengarten, İstanbul\n",
                        Map.of(
                                "weather.csv",
                                "date,tmin_c,tmax_c,rain_mm\n2026-03-01,1.5,9.0,0\n",
                                "log.csv",
                                "time,temp_c\n")));
        assertThat(plum.createdAt()).isEqualTo(Instant.parse("2026-03-02T11:00:00Z"));
        shelf.reopen("keeper", shelf.list("keeper").get(1).id());
        StoredSeason orchard = shelf.findCurrent("keeper").orElseThrow();
        assertThat(orchard.source()).isEqualTo(new SeasonSource.OnDisk("/home/keeper/bees", "orchard.toml"));
        assertThat(orchard.goal()).isEqualTo(Goal.BLOOM);
        assertThat(shelf.list("neighbour")).hasSize(1);
    }

    private static Path fixture(int version) {
        return FIXTURES.resolve("v" + version + ".sqlite");
    }
}
