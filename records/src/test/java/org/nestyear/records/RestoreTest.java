package org.nestyear.records;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDateTime;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.nestyear.records.UnreadableRecordsException.Reason;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.datasource.DriverManagerDataSource;

/** Putting a copy in the place of the records. */
class RestoreTest {
    private static final LocalDateTime NOW = LocalDateTime.of(2026, 11, 25, 17, 45, 3);
    private static final SeasonSource DISK = new SeasonSource.OnDisk("/home/keeper/bees", "season.toml");
    private static final String ASIDE = "nestyear-replaced-2026-11-25-174503.sqlite";

    @TempDir
    Path folder;

    @TempDir
    Path elsewhere;

    private DatabaseAddress.InFolder address;
    private Path copy;

    @BeforeEach
    void makeACopyOfThreeSeasonsAndGoOn() {
        address = new DatabaseAddress.InFolder(folder);
        copy = elsewhere.resolve("copy.sqlite");
        write(3);
        Backups.make(address, copy, false);
        write(2);
    }

    @Test
    void theCopyIsInPlaceAndWhatWasThereIsKept() throws Exception {
        byte[] bytes = Files.readAllBytes(copy);
        Restore.Restored done = Restore.restore(address, copy, NOW);

        assertThat(done.rows()).containsEntry("season", 3L);
        assertThat(done.tables()).isEqualTo(Database.NEWEST);
        assertThat(done.replaced()).contains(folder.resolve(ASIDE));
        assertThat(seasons()).isEqualTo(3);
        assertThat(names()).containsExactly(ASIDE, "nestyear.lock", Database.FILE_NAME);
        assertThat(Files.readAllBytes(copy)).isEqualTo(bytes);

        // And back again: what was set aside is a copy like any other.
        assertThat(Restore.restore(address, folder.resolve(ASIDE), NOW).replaced())
                .contains(folder.resolve("nestyear-replaced-2026-11-25-174503-2.sqlite"));
        assertThat(seasons()).isEqualTo(5);
    }

    @Test
    void aNewComputerHasNothingToSetAside(@TempDir Path fresh) {
        DatabaseAddress.InFolder here = new DatabaseAddress.InFolder(fresh);
        assertThat(Restore.restore(here, copy, NOW).replaced()).isEmpty();
        try (OpenDatabase open = Database.open(here)) {
            assertThat(new SeasonShelf(open.source(), Instant::now).list("keeper"))
                    .hasSize(3);
        }
    }

    @Test
    void recordsInUseAreNotReplaced() {
        try (OpenDatabase open = Database.open(address)) {
            UnreadableRecordsException e = assertRefusedAndNothingReplaced(copy, Reason.IN_USE);
            assertThat(e.sentence())
                    .isEqualTo("the records in " + open.address().words()
                            + " are in use; expected that no program has them open while they are replaced.");
        }
        assertThat(Restore.restore(address, copy, NOW).replaced()).isPresent();
    }

    @Test
    void recordsInUseByAnotherProgramAreNotReplaced() throws Exception {
        try (Child child = Child.start(OpenAndWait.class, folder.toString())) {
            assertThat(child.line()).isEqualTo("open");
            assertRefusedAndNothingReplaced(copy, Reason.IN_USE);
            child.kill();
        }
        assertThat(Restore.restore(address, copy, NOW).replaced()).isPresent();
        assertThat(seasons()).isEqualTo(3);
    }

    @Test
    void aDamagedCopyIsRefused() throws Exception {
        byte[] whole = Files.readAllBytes(copy);
        for (int kept : List.of(60, 5000, whole.length - 1)) {
            Files.write(copy, Arrays.copyOf(whole, kept));
            assertRefusedAndNothingReplaced(copy, Reason.DAMAGED);
        }
        byte[] spoilt = whole.clone();
        // Rows of the table of seasons, which nothing reads before the check of the whole file does.
        int page = pageOf("season");
        Arrays.fill(spoilt, (page - 1) * 4096, (page - 1) * 4096 + 3000, (byte) 0x5a);
        Files.write(copy, spoilt);
        UnreadableRecordsException e = assertRefusedAndNothingReplaced(copy, Reason.DAMAGED);
        assertThat(e.sentence())
                .isEqualTo("the records in " + copy + " are damaged; expected an SQLite file that is whole.");
    }

    @Test
    void aCopyWhoseRowsDoNotBelongTogetherIsRefused() {
        run("INSERT INTO season_file VALUES ('nobody', 'a.csv', 'x', 'now', 'now')");
        assertRefusedAndNothingReplaced(copy, Reason.DAMAGED);
    }

    @Test
    void aCopyOfANewerVersionIsRefused() {
        run("INSERT INTO flyway_schema_history (installed_rank, version, description, type, script, checksum,"
                + " installed_by, execution_time, success)"
                + " VALUES (99, '99', 'later', 'SQL', 'V99__later.sql', 1, 'x', 1, 1)");
        assertThat(assertRefusedAndNothingReplaced(copy, Reason.NEWER).sentence())
                .contains(copy.toString())
                .contains("(tables 99)");
    }

    @Test
    void whatIsNoCopyIsRefused() throws Exception {
        assertThat(assertRefusedAndNothingReplaced(elsewhere.resolve("none"), Reason.MISSING)
                        .sentence())
                .isEqualTo("there is no file " + elsewhere.resolve("none") + "; expected a copy of the records.");
        assertRefusedAndNothingReplaced(Files.writeString(elsewhere.resolve("notes"), "notes"), Reason.FOREIGN);
        assertRefusedAndNothingReplaced(Files.writeString(elsewhere.resolve("empty"), ""), Reason.FOREIGN);
        assertRefusedAndNothingReplaced(address.file(), Reason.FOREIGN);
        run("DROP TABLE flyway_schema_history");
        assertRefusedAndNothingReplaced(copy, Reason.FOREIGN);
    }

    @Test
    void damagedRecordsAreReplacedAndKeptAsTheyAre() throws Exception {
        byte[] cut = Arrays.copyOf(Files.readAllBytes(address.file()), 9000);
        Files.write(address.file(), cut);
        Files.write(folder.resolve("nestyear.sqlite-wal"), new byte[] {1, 2, 3});

        Restore.Restored done = Restore.restore(address, copy, NOW);
        assertThat(Files.readAllBytes(done.replaced().orElseThrow())).isEqualTo(cut);
        assertThat(seasons()).isEqualTo(3);
    }

    // Somebody's copy of the files themselves, made while the program ran.
    @Test
    void aCopyWithTheLogBesideItIsTakenWithItsLog() throws Exception {
        Path taken = elsewhere.resolve("taken.sqlite");
        try (OpenDatabase open = Database.open(address);
                var keptOpen = open.source().getConnection()) {
            new SeasonShelf(open.source(), Instant::now).open("keeper", DISK);
            Files.copy(address.file(), taken);
            Files.copy(folder.resolve("nestyear.sqlite-wal"), elsewhere.resolve("taken.sqlite-wal"));
            assertThat(keptOpen.isClosed()).isFalse();
        }
        write(4);
        assertThat(Restore.restore(address, taken, NOW).rows()).containsEntry("season", 6L);
        assertThat(seasons()).isEqualTo(6);
    }

    /** Opens the records of a folder, says so, and waits. */
    static final class OpenAndWait {
        public static void main(String[] arguments) throws IOException {
            Database.open(Path.of(arguments[0]));
            System.out.println("open");
            System.in.read();
        }
    }

    private UnreadableRecordsException assertRefusedAndNothingReplaced(Path from, Reason reason) {
        Map<String, String> before = content();
        UnreadableRecordsException e =
                catchThrowableOfType(UnreadableRecordsException.class, () -> Restore.restore(address, from, NOW));
        assertThat(e.reason()).as(e.sentence()).isEqualTo(reason);
        assertThat(e.sentence()).contains("; expected ").endsWith(".").hasLineCount(1);
        assertThat(content()).isEqualTo(before);
        return e;
    }

    private void write(int seasons) {
        try (OpenDatabase open = Database.open(address)) {
            SeasonShelf shelf = new SeasonShelf(open.source(), Instant::now);
            for (int i = 0; i < seasons; i++) {
                shelf.open("keeper", DISK);
            }
        }
    }

    private int seasons() {
        try (OpenDatabase open = Database.open(address)) {
            return new SeasonShelf(open.source(), Instant::now).list("keeper").size();
        }
    }

    private int pageOf(String table) {
        Object page = copyClient()
                .sql("SELECT rootpage FROM sqlite_master WHERE name = ?")
                .param(table)
                .query()
                .singleValue();
        return ((Number) page).intValue();
    }

    private void run(String sql) {
        copyClient().sql(sql).update();
    }

    private JdbcClient copyClient() {
        return JdbcClient.create(new DriverManagerDataSource(Sqlite.url(copy)));
    }

    private List<String> names() {
        return List.copyOf(content().keySet());
    }

    private Map<String, String> content() {
        Map<String, String> content = new TreeMap<>();
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : (Iterable<Path>) files::iterator) {
                content.put(file.getFileName().toString(), HexFormat.of().formatHex(Files.readAllBytes(file)));
            }
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
        return content;
    }
}
