package org.nestyear.records;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A program is killed in the middle of its writing, round after round, and no entry is lost that it had said was kept. Twenty-five
 * rounds with every build; {@code scripts/kill-rounds.sh} runs as many as asked. The kill is SIGKILL: the system still writes
 * what the program had handed over, so this shows that transactions are whole and told only when kept. That what was handed
 * over also outlasts a power cut rests on {@code synchronous = FULL}, which {@link SqliteTest} holds.
 */
class KilledWriterTest {
    private static final int ROUNDS = Integer.getInteger("nestyear.killRounds", 25);
    private static final long SEED = Long.getLong("nestyear.killSeed", 20261125L);
    private static final int LONGEST_MILLISECONDS = 200;
    private static final int ROUNDS_A_FILE = 20;

    @Test
    void noEntryThatWasSaidToBeKeptIsLost(@TempDir Path folder) throws Exception {
        SplittableRandom random = new SplittableRandom(SEED);
        List<Long> written = new ArrayList<>();
        long begun = System.nanoTime();
        Path file = folder;
        Set<String> kept = new HashSet<>();
        for (int round = 0; round < ROUNDS; round++) {
            if (round % ROUNDS_A_FILE == 0) {
                file = Files.createDirectory(folder.resolve("records-" + round));
                kept.clear();
            }
            List<String> told = writeAndKill(file, random);
            kept.addAll(told);
            written.add((long) told.size());
            assertKept(file, kept, "seed " + SEED + ", round " + round);
        }
        long all = written.stream().mapToLong(Long::longValue).sum();
        System.out.printf(
                Locale.ROOT,
                "killed writers: %d rounds, %d entries told, %.0f s%n",
                written.size(),
                all,
                (System.nanoTime() - begun) / 1e9);
        assertThat(written).hasSize(ROUNDS);
        assertThat(all).as("entries told before the kills").isGreaterThan(ROUNDS);
    }

    // The wait begins with the first entry told, so that every kill falls into the writing.
    private static List<String> writeAndKill(Path folder, SplittableRandom random) throws Exception {
        List<String> told = new ArrayList<>();
        try (Child child = Child.start(Diary.class, folder.toString(), "writer", "0")) {
            told.add(Objects.requireNonNull(child.line(), "the child ended before it wrote"));
            long until = System.nanoTime() + TimeUnit.MICROSECONDS.toNanos(random.nextInt(LONGEST_MILLISECONDS * 1000));
            while (System.nanoTime() < until) {
                Thread.onSpinWait();
            }
            assertThat(child.isAlive()).isTrue();
            child.kill();
            // 128 and the number of SIGKILL: https://www.gnu.org/software/bash/manual/html_node/Exit-Status.html
            assertThat(child.exit()).isEqualTo(128 + 9);
            told.addAll(child.wholeLines());
        }
        return told;
    }

    private static void assertKept(Path folder, Set<String> kept, String where) {
        DatabaseAddress.InFolder address = new DatabaseAddress.InFolder(folder);
        try (OpenDatabase open = Database.open(address)) {
            assertThat(Diary.in(open, "reader").ids()).as(where).containsAll(kept);
            SqliteFile.Contents contents = SqliteFile.verify(address.file(), address.file());
            // An entry and the act that wrote it are kept together or not at all.
            assertThat(contents.rows().get("act"))
                    .as(where)
                    .isEqualTo(contents.rows().get("site"));
        }
    }
}
