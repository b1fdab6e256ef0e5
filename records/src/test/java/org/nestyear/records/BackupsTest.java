package org.nestyear.records;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.nestyear.records.UnreadableRecordsException.Reason;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.datasource.DriverManagerDataSource;

/** Copies of the records. */
class BackupsTest {
    private static final SeasonSource UPLOAD =
            new SeasonSource.Uploaded("plum.toml", "format = 1\n", Map.of("a.csv", "date\n"));

    @TempDir
    Path folder;

    private DatabaseAddress.InFolder address;
    private OpenDatabase open;
    private SeasonShelf shelf;

    @BeforeEach
    void openRecords() {
        address = new DatabaseAddress.InFolder(folder);
        open = Database.open(address);
        shelf = new SeasonShelf(open.source(), Instant::now);
    }

    @AfterEach
    void close() {
        open.close();
    }

    @Test
    void aCopyHoldsEverythingAndIsOneFile(@TempDir Path elsewhere) throws Exception {
        StoredSeason season = shelf.open("keeper", UPLOAD);
        Path to = elsewhere.resolve("new folder").resolve("copy.sqlite");

        Backups.Copy copy = Backups.make(address, to, false);
        assertThat(copy.file()).isEqualTo(to);
        assertThat(copy.bytes()).isEqualTo(Files.size(to)).isPositive();
        assertThat(copy.tables()).isEqualTo(Database.NEWEST);
        assertThat(copy.rows()).containsEntry("season", 1L).containsEntry("season_file", 1L);
        assertThat(names(elsewhere.resolve("new folder"))).containsExactly("copy.sqlite");

        Path other = Files.createDirectory(elsewhere.resolve("other"));
        Files.copy(to, other.resolve(Database.FILE_NAME));
        assertThat(new SeasonShelf(Database.open(other), Instant::now).findCurrent("keeper"))
                .contains(season);
    }

    @Test
    void whatWasWrittenMomentsAgoIsInTheCopyThoughItIsStillInTheLog() throws Exception {
        try (var keptOpen = open.source().getConnection()) {
            shelf.open("keeper", UPLOAD);
            assertThat(Files.size(folder.resolve("nestyear.sqlite-wal"))).isPositive();
            assertThat(Backups.make(address, folder.resolve("copy.sqlite"), false)
                            .rows())
                    .containsEntry("season", 1L);
            assertThat(keptOpen.isClosed()).isFalse();
        }
    }

    @Test
    void nothingIsWrittenOverUntold() throws Exception {
        Path to = Files.writeString(folder.resolve("notes.txt"), "notes");
        UnreadableRecordsException e =
                catchThrowableOfType(UnreadableRecordsException.class, () -> Backups.make(address, to, false));
        assertThat(e.sentence()).isEqualTo("there is a file " + to + " already; expected a name that is free.");
        assertThat(e.reason()).isEqualTo(Reason.EXISTS);
        assertThat(Files.readString(to)).isEqualTo("notes");

        Backups.make(address, to, true);
        assertThat(Files.readAllBytes(to))
                .startsWith("SQLite format 3".getBytes(java.nio.charset.StandardCharsets.US_ASCII));
    }

    @Test
    void aFolderIsNeverReplacedAndAPlaceThatIsNoFolderIsTold() throws Exception {
        Path taken = Files.createDirectory(folder.resolve("taken"));
        assertThat(refusal(taken, true).reason()).isEqualTo(Reason.EXISTS);
        Path file = Files.writeString(folder.resolve("file"), "x");
        UnreadableRecordsException e = refusal(file.resolve("copy.sqlite"), false);
        assertThat(e.reason()).isEqualTo(Reason.UNWRITABLE);
        assertThat(e.sentence())
                .startsWith("the copy " + file.resolve("copy.sqlite") + " cannot be written; expected ");
    }

    @Test
    void damagedRecordsGiveNoCopyAndKeepTheOldOne() throws Exception {
        for (int i = 0; i < 200; i++) {
            shelf.open("keeper", UPLOAD);
        }
        Path to = folder.resolve("copy.sqlite");
        Backups.make(address, to, false);
        byte[] good = Files.readAllBytes(to);
        open.close();

        // The page where the table of seasons begins. (Damage to an index alone would not be in the copy, which has its
        // own.)
        int page = JdbcClient.create(new DriverManagerDataSource(Sqlite.url(to)))
                .sql("SELECT rootpage FROM sqlite_master WHERE name = 'season'")
                .query(Integer.class)
                .single();
        byte[] bytes = Files.readAllBytes(to);
        Arrays.fill(bytes, (page - 1) * 4096, (page - 1) * 4096 + 3000, (byte) 0x5a);
        Files.write(address.file(), bytes);
        assertThat(refusal(to, true).reason()).isEqualTo(Reason.DAMAGED);
        assertThat(Files.readAllBytes(to)).isEqualTo(good);
        assertThat(names(folder)).doesNotContain("copy.sqlite.unfinished");
    }

    @Test
    void withoutRecordsThereIsNothingToCopy(@TempDir Path empty) {
        UnreadableRecordsException e = catchThrowableOfType(
                UnreadableRecordsException.class,
                () -> Backups.make(new DatabaseAddress.InFolder(empty), empty.resolve("c"), false));
        assertThat(e.sentence())
                .isEqualTo("there are no records in " + empty + " yet; expected the file nestyear.sqlite.");
        assertThat(names(empty)).isEmpty();
    }

    @Test
    void oneCopyADayIsMadeAndOldOnesAreClearedAway() throws Exception {
        LocalDate first = LocalDate.of(2026, 1, 1);
        Path own = Backups.named(folder, LocalDateTime.of(2026, 1, 1, 8, 0, 5));
        Backups.make(address, own, false);
        assertThat(own).hasFileName("nestyear-2026-01-01-080005.sqlite");
        for (int day = 0; day < 45; day++) {
            assertThat(Backups.daily(address, first.plusDays(day))).isPresent();
            assertThat(Backups.daily(address, first.plusDays(day))).isEmpty();
        }
        // Worked out by hand: 2026-02-14 is a Saturday.
        assertThat(names(folder.resolve("backups")))
                .containsExactly(
                        "nestyear-2026-01-01-080005.sqlite",
                        "nestyear-2026-01-25.sqlite",
                        "nestyear-2026-01-31.sqlite",
                        "nestyear-2026-02-01.sqlite",
                        "nestyear-2026-02-08.sqlite",
                        "nestyear-2026-02-09.sqlite",
                        "nestyear-2026-02-10.sqlite",
                        "nestyear-2026-02-11.sqlite",
                        "nestyear-2026-02-12.sqlite",
                        "nestyear-2026-02-13.sqlite",
                        "nestyear-2026-02-14.sqlite");
    }

    private UnreadableRecordsException refusal(Path to, boolean overwrite) {
        return catchThrowableOfType(UnreadableRecordsException.class, () -> Backups.make(address, to, overwrite));
    }

    private static List<String> names(Path folder) {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        } catch (java.io.IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }
}
