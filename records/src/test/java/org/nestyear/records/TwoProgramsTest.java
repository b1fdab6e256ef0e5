package org.nestyear.records;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Two programs on the same records, as the pages and the command line are. */
class TwoProgramsTest {
    private static final int ENTRIES = 150;

    @Test
    void bothMakeTheTablesBothWriteNothingIsLostAndCopiesMadeMeanwhileAreWhole(@TempDir Path folder) throws Exception {
        DatabaseAddress.InFolder address = new DatabaseAddress.InFolder(folder);
        ExecutorService threads = Executors.newFixedThreadPool(2);
        List<Long> seen = new ArrayList<>();
        Set<String> told = new HashSet<>();
        try (Child one = Child.start(Diary.class, folder.toString(), "one", Integer.toString(ENTRIES));
                Child two = Child.start(Diary.class, folder.toString(), "two", Integer.toString(ENTRIES))) {
            List<Future<List<String>>> lines =
                    List.of(threads.submit((Callable<List<String>>) one::rest), threads.submit((Callable<List<String>>)
                            two::rest));
            while (one.isAlive() || two.isAlive()) {
                if (Files.exists(address.file())
                        && SqliteFile.inspect(address.file()).isPresent()) {
                    seen.add(copy(address, folder.resolve("copies").resolve(seen.size() + ".sqlite")));
                }
            }
            for (Future<List<String>> each : lines) {
                assertThat(each.get()).hasSize(ENTRIES);
                told.addAll(each.get());
            }
            assertThat(one.exit()).isZero();
            assertThat(two.exit()).isZero();
        } finally {
            threads.shutdownNow();
        }
        assertThat(told).hasSize(2 * ENTRIES);
        try (OpenDatabase open = Database.open(address)) {
            assertThat(Diary.in(open, "reader").ids()).containsExactlyInAnyOrderElementsOf(told);
        }
        assertThat(seen).isSorted();
        assertThat(seen.stream().filter(rows -> rows > 0 && rows < 2 * ENTRIES))
                .as("copies made while both wrote: " + seen)
                .isNotEmpty();
    }

    // Every copy is read through as it is made; beyond that an entry and its act are both in it or neither is.
    private static long copy(DatabaseAddress.InFolder address, Path to) {
        Backups.Copy copy = Backups.make(address, to, false);
        assertThat(copy.rows().get("act")).isEqualTo(copy.rows().get("site"));
        return copy.rows().getOrDefault("site", -1L);
    }
}
