package org.nestyear.records;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.nestyear.core.season.Goal;
import org.springframework.dao.DataAccessException;
import org.springframework.jdbc.core.simple.JdbcClient;

/** The shelf on both databases. */
class SeasonShelfTest extends OnBothDatabases {
    private static final SeasonSource DISK = new SeasonSource.OnDisk("/home/keeper/bees", "season.toml");
    private static final SeasonSource UPLOAD =
            new SeasonSource.Uploaded("plum.toml", "format = 1\n", Map.of("weather/a.csv", "date\n", "b.csv", "x\n"));

    private SeasonShelf shelf;
    private Instant now = Instant.parse("2026-03-01T10:00:00Z");

    @BeforeEach
    void openShelf() {
        shelf = new SeasonShelf(source(), () -> now);
    }

    @Test
    void aNewShelfHoldsNoSeason() {
        assertThat(shelf.findCurrent("keeper")).isEmpty();
        assertThat(shelf.list("keeper")).isEmpty();
    }

    @Test
    void everyKindOfSeasonComesBackAsItWasKept() {
        for (SeasonSource kept : List.of(new SeasonSource.Demo("tansy-lane.toml"), DISK, UPLOAD)) {
            now = now.plusSeconds(60);
            StoredSeason opened = shelf.open("keeper", kept);
            assertThat(shelf.findCurrent("keeper")).contains(opened);
            assertThat(opened.source()).isEqualTo(kept);
            assertThat(opened.goal()).isNull();
            assertThat(opened.createdAt()).isEqualTo(now);
        }
    }

    @Test
    void theSeasonAndItsAimAreStillThereAfterReopeningTheFile() {
        StoredSeason opened = shelf.open("keeper", UPLOAD);
        now = now.plusSeconds(5);
        assertThat(shelf.chooseGoal("keeper", opened.id(), Goal.BLOOM)).isTrue();

        reopen();
        SeasonShelf again = new SeasonShelf(source(), () -> now);
        StoredSeason current = again.findCurrent("keeper").orElseThrow();
        assertThat(current.source()).isEqualTo(UPLOAD);
        assertThat(current.goal()).isEqualTo(Goal.BLOOM);
        assertThat(current.createdAt()).isEqualTo(opened.createdAt());
        assertThat(current.changedAt()).isEqualTo(now);
        assertThat(Files.exists(folder.resolve(Database.FILE_NAME))).isEqualTo(kind == Kind.SQLITE);
    }

    @Test
    void anEarlierSeasonCanBeOpenedAgain() {
        StoredSeason first = shelf.open("keeper", DISK);
        now = now.plusSeconds(1);
        StoredSeason second = shelf.open("keeper", UPLOAD);
        assertThat(shelf.list("keeper")).extracting(SeasonSummary::id).containsExactly(second.id(), first.id());

        now = now.plusSeconds(1);
        assertThat(shelf.reopen("keeper", first.id())).isTrue();
        assertThat(shelf.list("keeper")).extracting(SeasonSummary::id).containsExactly(first.id(), second.id());
        assertThat(shelf.findCurrent("keeper").orElseThrow().source()).isEqualTo(DISK);
    }

    @Test
    void theLastOpenedIsCurrentEvenWhenTheClockWasSetBack() {
        shelf.open("keeper", DISK);
        now = now.minusSeconds(3600);
        StoredSeason second = shelf.open("keeper", UPLOAD);
        assertThat(shelf.findCurrent("keeper").orElseThrow().id()).isEqualTo(second.id());
    }

    @Test
    void anotherOwnerNeitherSeesNorChangesASeason() {
        StoredSeason opened = shelf.open("keeper", DISK);
        assertThat(shelf.findCurrent("neighbour")).isEmpty();
        assertThat(shelf.list("neighbour")).isEmpty();
        assertThat(shelf.reopen("neighbour", opened.id())).isFalse();
        assertThat(shelf.chooseGoal("neighbour", opened.id(), Goal.BROOD)).isFalse();
        assertThat(shelf.findCurrent("keeper").orElseThrow().goal()).isNull();
    }

    @Test
    void aFileThatCannotBeKeptKeepsNothingOfItsSeason() {
        JdbcClient.create(source()).sql("DROP TABLE season_file").update();
        assertThatThrownBy(() -> shelf.open("keeper", UPLOAD)).isInstanceOf(DataAccessException.class);
        assertThat(shelf.list("keeper")).isEmpty();
    }

    @Test
    void theTableRefusesAnAimItDoesNotKnow() {
        shelf.open("keeper", DISK);
        JdbcClient jdbc = JdbcClient.create(source());
        assertThatThrownBy(() -> jdbc.sql("UPDATE season SET goal = 'honey'").update())
                .isInstanceOf(DataAccessException.class)
                .hasMessageMatching("(?is).*check constraint.*");
    }

    @Test
    void manyThreadsOpenAtOnceWithoutLosingOne() throws Exception {
        int openings = 40;
        ExecutorService threads = Executors.newFixedThreadPool(8);
        try {
            List<Callable<StoredSeason>> work = IntStream.range(0, openings)
                    .mapToObj(i -> (Callable<StoredSeason>) () -> shelf.open("keeper", DISK))
                    .toList();
            for (Future<StoredSeason> done : threads.invokeAll(work)) {
                assertThat(done.get()).isNotNull();
            }
        } finally {
            threads.shutdownNow();
        }
        List<SeasonSummary> all = shelf.list("keeper");
        assertThat(all).hasSize(openings);
        assertThat(all.stream().map(SeasonSummary::openedAt).distinct()).hasSize(openings);
    }
}
