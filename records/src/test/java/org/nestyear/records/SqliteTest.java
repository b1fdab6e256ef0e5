package org.nestyear.records;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermission;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.nestyear.records.UnreadableRecordsException.Reason;
import org.springframework.jdbc.core.simple.JdbcClient;

/** The SQLite file: how it runs, and what is said when it cannot. */
class SqliteTest {
    private static final SeasonSource DISK = new SeasonSource.OnDisk("/home/keeper/bees", "season.toml");

    @TempDir
    Path folder;

    @Test
    void theFileRunsWithTheFlagsThatKeepAnEntryThroughAPowerCut() {
        JdbcClient jdbc = JdbcClient.create(Database.open(folder));
        assertThat(pragma(jdbc, "journal_mode")).isEqualTo("wal");
        // https://www.sqlite.org/pragma.html#pragma_synchronous: 2 is FULL.
        assertThat(pragma(jdbc, "synchronous")).isEqualTo("2");
        assertThat(pragma(jdbc, "foreign_keys")).isEqualTo("1");
        assertThat(pragma(jdbc, "busy_timeout")).isEqualTo("5000");
    }

    @Test
    void aFileThatIsNoDatabaseIsRefusedAndLeftAsItIs() throws Exception {
        Files.writeString(
                file(), "Not a database, but somebody's notes, longer than the hundred bytes of a header. ".repeat(20));
        assertRefused(
                Reason.FOREIGN,
                "the file " + file() + " is no database; expected the records that Nestyear keeps (an SQLite file).");
    }

    @Test
    void aFolderInItsPlaceIsRefused() throws Exception {
        Files.createDirectory(file());
        UnreadableRecordsException e = refusal();
        assertThat(e.reason()).isEqualTo(Reason.FOREIGN);
        assertThat(e.sentence()).contains(file().toString());
    }

    // As a disk that is full, or a copy broken off, leaves it.
    @Test
    void aFileThatIsCutOffIsRefusedAndLeftAsItIs() throws Exception {
        byte[] whole = filled();
        for (int kept : List.of(50, 100, 3000, whole.length / 2, whole.length - 1)) {
            Files.write(file(), Arrays.copyOf(whole, kept));
            assertRefused(
                    Reason.DAMAGED,
                    "the records in " + file() + " are damaged; expected an SQLite file that is whole.");
        }
    }

    @Test
    void aFileWithADamagedSchemaIsRefusedAndLeftAsItIs() throws Exception {
        byte[] bytes = filled();
        // The first page after the header of the file: https://www.sqlite.org/fileformat2.html#the_database_header
        Arrays.fill(bytes, 100, 3900, (byte) 0x5a);
        Files.write(file(), bytes);
        assertRefused(
                Reason.DAMAGED, "the records in " + file() + " are damaged; expected an SQLite file that is whole.");
    }

    @Test
    void aFileThatMayNotBeWrittenIsRefusedAndLeftAsItIs() throws Exception {
        filled();
        Map<String, byte[]> before = content();
        Files.setPosixFilePermissions(file(), Set.of(PosixFilePermission.OWNER_READ));
        Child child = Child.startWithoutPowers(OpenOnce.class, folder.toString());
        assertThat(child.rest())
                .containsExactly("READ_ONLY the records in " + file()
                        + " may not be written by you; expected a file and a folder that you may write.");
        assertThat(content()).containsOnlyKeys(FOLDER_AFTER).isNotEmpty();
        assertThat(content().get(Database.FILE_NAME)).isEqualTo(before.get(Database.FILE_NAME));
    }

    private static final String[] FOLDER_AFTER = {"nestyear.lock", Database.FILE_NAME};

    /** Opens the records of a folder and prints why it could not. */
    static final class OpenOnce {
        public static void main(String[] arguments) {
            try {
                Database.open(Path.of(arguments[0]));
                System.out.println("opened");
            } catch (UnreadableRecordsException e) {
                System.out.println(e.reason() + " " + e.sentence());
            }
        }
    }

    private void assertRefused(Reason reason, String sentence) throws Exception {
        Map<String, byte[]> before = content();
        UnreadableRecordsException e = refusal();
        assertThat(e.sentence()).isEqualTo(sentence);
        assertThat(e.reason()).isEqualTo(reason);
        assertThat(content().get(Database.FILE_NAME)).isEqualTo(before.get(Database.FILE_NAME));
    }

    private UnreadableRecordsException refusal() {
        return catchThrowableOfType(UnreadableRecordsException.class, () -> Database.open(folder));
    }

    private byte[] filled() throws Exception {
        try (OpenDatabase open = Database.open(new DatabaseAddress.InFolder(folder))) {
            SeasonShelf shelf = new SeasonShelf(open.source(), Instant::now);
            for (int i = 0; i < 50; i++) {
                shelf.open("keeper", DISK);
            }
        }
        return Files.readAllBytes(file());
    }

    private Path file() {
        return folder.resolve(Database.FILE_NAME);
    }

    private Map<String, byte[]> content() throws Exception {
        Map<String, byte[]> content = new TreeMap<>();
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : (Iterable<Path>) files::iterator) {
                content.put(file.getFileName().toString(), Files.readAllBytes(file));
            }
        }
        return content;
    }

    private static String pragma(JdbcClient jdbc, String name) {
        return String.valueOf(jdbc.sql("PRAGMA " + name).query().singleValue());
    }
}
