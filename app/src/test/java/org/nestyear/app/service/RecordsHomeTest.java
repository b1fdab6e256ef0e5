package org.nestyear.app.service;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Map;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Where the records are by environment and command line, and the copy a day. */
class RecordsHomeTest {
    private static final String URL = "jdbc:postgresql://h:5432/bees";
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-11-25T12:00:00Z"), ZoneOffset.UTC);

    @TempDir
    Path folder;

    @Test
    void withoutASettingTheyAreInTheFileOfTheDataFolder() {
        Map<String, String> environment = Map.of("NESTYEAR_HOME", folder.toString(), "NESTYEAR_DATABASE", " ");
        RecordsHome home = RecordsHome.of(environment, null, null);
        assertThat(home.words()).isEqualTo(folder.resolve("nestyear.sqlite").toString());
        assertThat(home.folder()).isEqualTo(folder);
    }

    @Test
    void oneSettingMovesThemToAServerAndNoPasswordIsTold() {
        Map<String, String> environment = Map.of(
                "NESTYEAR_HOME",
                folder.toString(),
                "NESTYEAR_DATABASE",
                URL + "?user=k&password=secret",
                "NESTYEAR_DATABASE_PASSWORD",
                "secret");
        RecordsHome home = RecordsHome.of(environment, null, null);
        assertThat(home.words()).isEqualTo(URL);
        assertThat(home.folder()).isEqualTo(folder);
        assertThat(RecordsHome.of(environment, null, "jdbc:postgresql:other").words())
                .isEqualTo("jdbc:postgresql:other");
        assertThat(RecordsHome.of(environment, folder.resolve("own"), null).words())
                .isEqualTo(folder.resolve("own").resolve("nestyear.sqlite").toString());
        assertThat(RecordsHome.of(environment, folder.resolve("own"), URL).words())
                .isEqualTo(URL);
    }

    @Test
    void aSettingThatIsNoAddressIsRefused() {
        Map<String, String> environment =
                Map.of("NESTYEAR_HOME", folder.toString(), "NESTYEAR_DATABASE", "postgres://k:secret@h/bees");
        Refusal refusal = catchThrowableOfType(Refusal.class, () -> RecordsHome.of(environment, null, null));
        assertThat(refusal.code()).isEqualTo("NY-RECORDS-SETTING");
        assertThat(refusal.getMessage()).doesNotContain("secret").contains("Maybe only jdbc: is missing");
    }

    @Test
    void theCopyOfTheDayIsMadeAndAFaultIsTold() throws Exception {
        RecordsHome home = RecordsHome.in(folder);
        home.open();
        BlockingQueue<String> complaints = new LinkedBlockingQueue<>();
        DailyCopies.start(home, CLOCK, complaints::add);
        Path copy = folder.resolve("backups").resolve("nestyear-2026-11-25.sqlite");
        for (int tenth = 0; tenth < 600 && !Files.exists(copy); tenth++) {
            Thread.sleep(100);
        }
        assertThat(copy).isRegularFile();
        assertThat(complaints).isEmpty();

        // A file where the folder of copies was: none can be written there.
        Files.move(folder.resolve("backups"), folder.resolve("elsewhere"));
        Files.writeString(folder.resolve("backups"), "x");
        DailyCopies.start(home, Clock.offset(CLOCK, Duration.ofDays(1)), complaints::add);
        assertThat(complaints.poll(60, TimeUnit.SECONDS))
                .startsWith("today's copy of the records could not be made: the copy ")
                .contains("cannot be written; expected ");
        assertThat(folder.resolve("elsewhere").resolve("nestyear-2026-11-25.sqlite"))
                .isRegularFile();
    }
}
