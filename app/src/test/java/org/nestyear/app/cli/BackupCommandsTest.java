package org.nestyear.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.nestyear.app.JsonSchemas;

/** Copying the records and putting a copy back. */
class BackupCommandsTest {
    private static final String[] SITE = {
        "enter", "site", "name=Orchard", "latitude_deg=40.78", "longitude_deg=-73.97", "zone=America/New_York"
    };

    @TempDir
    Path folder;

    private String data;

    @BeforeEach
    void nameTheFolder() {
        data = folder.resolve("records").toString();
    }

    @Test
    void aCopyIsMadeAndPutBackAndWhatWasThereIsKept() {
        given();
        String copy = folder.resolve("copy.sqlite").toString();
        Run made = Run.of("backup", copy, "--data", data);
        assertThat(made.exit()).as(made.err()).isZero();
        assertThat(made.out()).contains(copy, "1 entry, ").contains("read through and whole.");

        Run second = Run.of("enter", "note", "site=Orchard", "on_date=2015-03-01", "note=first", "--data", data);
        assertThat(second.exit()).as(second.err()).isZero();
        Run back = Run.of("restore", copy, "--data", data);
        // The program that wrote the entry, this one, has the records open.
        assertThat(back.exit()).isEqualTo(2);
        assertThat(back.err()).contains("are in use; expected ").contains("[NY-RECORDS-IN-USE]");

        String fresh = folder.resolve("fresh").toString();
        Run elsewhere = Run.of("restore", copy, "--data", fresh);
        assertThat(elsewhere.exit()).as(elsewhere.err()).isZero();
        // Lines break where a path is long.
        assertThat(elsewhere.out().replaceAll("\\s+", " "))
                .contains("are now those of", copy)
                .doesNotContain("kept in");
        Run again = Run.of("restore", copy, "--data", fresh);
        assertThat(again.out().replaceAll("\\s+", " "))
                .contains("kept in")
                .contains("nestyear-replaced-2015-03-10-120000.sqlite");
        assertThat(Run.of("entries", "site", "--data", fresh).out()).contains("Orchard");
    }

    @Test
    void bothAnswerAsJson() {
        given();
        Run made = Run.of("backup", "--data", data, "--json");
        JsonSchemas.assertValid("backup.schema.json", made.out());
        Path copy = Path.of(data, "backups", "nestyear-2015-03-10-120000.sqlite");
        assertThat(made.out()).contains("\"file\":\"" + copy + "\"", "\"entries\":1");
        assertThat(copy).isRegularFile();
        Run back = Run.of(
                "restore", copy.toString(), "--data", folder.resolve("fresh").toString(), "--json");
        JsonSchemas.assertValid("restore.schema.json", back.out());
        assertThat(back.out()).contains("\"replaced\":null");
    }

    @Test
    void aFolderTakesACopyUnderANameOfTheMoment() throws IOException {
        given();
        Path stick = Files.createDirectory(folder.resolve("stick"));
        assertThat(Run.of("backup", stick.toString(), "--data", data).exit()).isZero();
        assertThat(stick.resolve("nestyear-2015-03-10-120000.sqlite")).isRegularFile();
    }

    @Test
    void whatCannotBeDoneIsRefusedInOneSentence() throws IOException {
        Path notes = Files.writeString(folder.resolve("notes.txt"), "notes");
        refused("NY-RECORDS-MISSING", "backup", "--data", data);
        given();
        refused("NY-FILE-EXISTS", "backup", notes.toString(), "--data", data);
        refused("NY-RECORDS-FOREIGN", "restore", notes.toString(), "--data", data);
        refused("NY-RECORDS-MISSING", "restore", folder.resolve("none").toString(), "--data", data);
        refused("NY-RECORDS-SETTING", "backup", "--database", "mysql://keeper:mud-and-reed-7@h/bees");
        refused("NY-RECORDS-SERVER", "entries", "site", "--database", "jdbc:postgresql://localhost:1/bees");
        Run server = refused(
                "NY-RECORDS-ON-SERVER", "backup", "--database", "jdbc:postgresql://h/bees?password=mud-and-reed-7");
        assertThat(server.err()).contains("jdbc:postgresql://h/bees, where").contains("pg_dump", "nestyear export");
    }

    private static Run refused(String code, String... arguments) {
        Run run = Run.of(arguments);
        assertThat(run.exit()).as(run.err()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err())
                .contains("; expected ")
                .contains(". [" + code + "]")
                .hasLineCount(run.err().contains("\nMaybe ") ? 2 : 1)
                .doesNotContain("mud-and-reed-7");
        return run;
    }

    private void given() {
        String[] words = Arrays.copyOf(SITE, SITE.length + 2);
        words[SITE.length] = "--data";
        words[SITE.length + 1] = data;
        Run run = Run.of(words);
        assertThat(run.exit()).as(run.err()).isZero();
    }
}
