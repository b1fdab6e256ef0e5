package org.nestyear.app.book;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import javax.sql.DataSource;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.nestyear.app.service.Refusal;
import org.nestyear.records.Database;
import org.nestyear.records.SeasonShelf;
import org.nestyear.records.SeasonSource;
import org.nestyear.records.book.Entry;
import org.nestyear.records.book.RawTable;
import org.nestyear.records.book.RecordBook;
import org.nestyear.records.book.Sheets;
import org.nestyear.records.book.WholeAccount;

/** A whole account out and back, byte for byte. */
class AccountArchiveTest {
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-03-01T10:00:00Z"), ZoneOffset.UTC);

    @TempDir
    Path folder;

    private DataSource source;

    @BeforeEach
    void fill() throws IOException {
        source = Database.open(Files.createDirectories(folder.resolve("one")));
        BookDesk desk = BookDesk.of(source, CLOCK);
        for (String name : List.of("=Orchard", "Gårdens \"bi\", hus", "'quoted")) {
            desk.add(
                    "Ada",
                    Sheets.get("site"),
                    RecordBook.newId(),
                    Map.of("name", name, "latitude_deg", "40.1", "longitude_deg", "-7.25", "zone", "UTC"));
        }
        Entry visit = desk.add(
                "Ada",
                Sheets.get("visit"),
                RecordBook.newId(),
                Map.of("site", "=Orchard", "on_date", "2026-02-01", "more_plugged", "12", "note", "two\nlines"));
        desk.correct(
                "Ben",
                visit.sheet(),
                visit.id(),
                1,
                Map.of("site", "=Orchard", "on_date", "2026-02-01", "more_plugged", "21"));
        desk.undo("Ada");
        Entry gone = desk.add(
                "Ada",
                Sheets.get("note"),
                RecordBook.newId(),
                Map.of("site", "'quoted", "on_date", "2026-02-01", "note", "x"));
        desk.remove("Ada", gone.sheet(), gone.id(), 1);
        new SeasonShelf(source, CLOCK)
                .open(
                        "keeper",
                        new SeasonSource.Uploaded("a.toml", "x = \"\r\n\"\n", Map.of("w.csv", "", "v.csv", "1\r\n")));
        WholeAccount account = new WholeAccount(source, CLOCK);
        account.together(() -> {
            account.putPicture("keeper", sha256Of(new byte[] {1, 0, -1}), new byte[] {1, 0, -1});
            return true;
        });
    }

    @Test
    void anAccountComesBackByteForByte() throws IOException {
        Path first = write(source, "first.zip");
        DataSource other = Database.open(Files.createDirectories(folder.resolve("two")));
        AccountArchive.Contents contents = new AccountArchive(other, CLOCK, "keeper").read(first, true, name -> {});
        assertThat(contents.added()).isEqualTo(contents.all()).isGreaterThan(15);
        assertThat(Files.readAllBytes(write(other, "second.zip"))).isEqualTo(Files.readAllBytes(first));
        // The history came along: what was taken back can be done again.
        BookDesk desk = BookDesk.of(other, CLOCK);
        assertThat(desk.listActs(20)).hasSize(8);
        String undo = desk.listActs(20).stream()
                .filter(act -> act.undoes() != null)
                .findFirst()
                .orElseThrow()
                .id();
        desk.undo("Ada", undo);
        assertThat(desk.list(org.nestyear.records.book.Search.of(Sheets.get("visit")))
                        .get(0)
                        .text("more_plugged"))
                .isEqualTo("21");
    }

    @Test
    void readingItTwiceAddsNothing() throws IOException {
        Path first = write(source, "first.zip");
        assertThat(new AccountArchive(source, CLOCK, "keeper")
                        .read(first, true, name -> {})
                        .added())
                .isZero();
    }

    @Test
    void everyTableOfTheDatabaseIsInTheArchive() throws IOException, SQLException {
        Set<String> tables = new TreeSet<>();
        try (var connection = source.getConnection();
                var names = connection.getMetaData().getTables(null, null, "%", new String[] {"TABLE"})) {
            while (names.next()) {
                tables.add(names.getString("TABLE_NAME"));
            }
        }
        tables.removeAll(Set.of("flyway_schema_history", "picture", "sqlite_schema", "sqlite_sequence"));
        assertThat(RawTable.list().stream().map(RawTable::name)).containsExactlyInAnyOrderElementsOf(tables);
    }

    @Test
    void whatIsCutOffOrDamagedIsRefusedAndNothingIsWritten() throws IOException {
        Path whole = write(source, "whole.zip");
        byte[] bytes = Files.readAllBytes(whole);
        DataSource empty = Database.open(Files.createDirectories(folder.resolve("three")));
        for (int length : new int[] {0, 10, bytes.length / 2, bytes.length - 1}) {
            Path cut = Files.write(folder.resolve("cut.zip"), Arrays.copyOf(bytes, length));
            refused(empty, cut, "cut off or is no archive");
        }
        refused(empty, rewritten(bytes, "/tables/visit.csv", "x"), "tables/visit.csv in it is damaged");
        refused(empty, rewritten(bytes, "/tables/visit.csv", null), "tables/visit.csv is missing");
        refused(empty, rewritten(bytes, "/contents.csv", null), "list of contents is missing");
        refused(empty, rewritten(bytes, "/extra.txt", "x"), "extra.txt in it is not in its list");
        refused(empty, rewritten(bytes, "/nestyear-archive.txt", "format 1\nschema 99\n"), "newer version");
        refused(empty, rewritten(bytes, "/nestyear-archive.txt", null), "no archive of records");
        refused(empty, folder.resolve("nowhere.zip"), "no such file");
        assertThat(BookDesk.of(empty, CLOCK).listActs(5)).isEmpty();
    }

    @Test
    void anAccountThatTellsSomethingElseIsNotOverwritten() throws IOException {
        Path first = write(source, "first.zip");
        BookDesk desk = BookDesk.of(source, CLOCK);
        desk.undo("Ada");
        desk.undo("Ada");
        refused(source, first, "tells something else than here");
    }

    private void refused(DataSource into, Path file, String message) {
        assertThatThrownBy(() -> new AccountArchive(into, CLOCK, "keeper").read(file, true, name -> {}))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining(message)
                .hasMessageContaining("expected");
    }

    private Path rewritten(byte[] bytes, String name, @org.jspecify.annotations.Nullable String content)
            throws IOException {
        Path copy = Files.write(folder.resolve("changed.zip"), bytes);
        try (FileSystem zip = FileSystems.newFileSystem(copy)) {
            if (content == null) {
                Files.delete(zip.getPath(name));
            } else {
                Files.writeString(zip.getPath(name), content);
            }
        }
        return copy;
    }

    private Path write(DataSource from, String name) throws IOException {
        Path file = folder.resolve(name);
        try (OutputStream out = Files.newOutputStream(file)) {
            new AccountArchive(from, CLOCK, "keeper").write(out, table -> {});
        }
        return file;
    }

    private static String sha256Of(byte[] bytes) {
        try {
            return java.util.HexFormat.of()
                    .formatHex(
                            java.security.MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (java.security.NoSuchAlgorithmException e) {
            throw new IllegalStateException(new String(bytes, StandardCharsets.UTF_8), e);
        }
    }
}
