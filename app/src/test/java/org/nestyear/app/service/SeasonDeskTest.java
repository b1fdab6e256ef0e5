package org.nestyear.app.service;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.InstantSource;
import java.time.ZoneOffset;
import java.util.HashMap;
import java.util.Map;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.nestyear.core.plan.Planner;
import org.nestyear.core.season.Goal;
import org.nestyear.core.season.Nests;
import org.nestyear.data.CatalogueFiles;
import org.nestyear.records.Database;
import org.nestyear.records.SeasonShelf;

/** The desk over a real database file, with the real model, counting how often it is run. */
class SeasonDeskTest {
    @TempDir
    Path folder;

    private final AtomicInteger planned = new AtomicInteger();
    private Instant now = Instant.parse("2015-03-10T12:00:00Z");
    private SeasonDesk desk;
    private Path season;

    @BeforeEach
    void openDesk() throws IOException {
        desk = desk();
        season = Demo.write(folder.resolve("demo")).get(0);
    }

    @Test
    void anEmptyDeskHasNoSeasonAndChoosingAnAimChangesNothing() {
        desk.chooseGoal(Goal.BROOD);
        assertThat(desk.findCurrent()).isEmpty();
        assertThat(desk.list()).isEmpty();
    }

    @Test
    void theDemoIsPlannedOnceAndRemembersItsAimAfterARestart() {
        desk.openDemo();
        OpenSeason first = desk.findCurrent().orElseThrow();
        assertThat(first.demo()).isTrue();
        assertThat(first.answer().inputs().goal()).isEqualTo(Goal.BOTH);
        assertThat(desk.findCurrent().orElseThrow().answer()).isSameAs(first.answer());
        assertThat(planned).hasValue(1);

        desk.chooseGoal(Goal.BLOOM);
        OpenSeason bloom = desk.findCurrent().orElseThrow();
        assertThat(bloom.answer().plan().release().goal()).isEqualTo(Goal.BLOOM);
        assertThat(bloom.answer().plan().release().curve())
                .isNotEqualTo(first.answer().plan().release().curve());

        desk = desk();
        assertThat(desk.findCurrent().orElseThrow().answer().inputs().goal()).isEqualTo(Goal.BLOOM);
    }

    @Test
    void aFileOnDiskIsReadAgainOnlyAfterItChanged() throws IOException {
        desk.openPath(season.toString());
        desk.findCurrent();
        desk.findCurrent();
        assertThat(planned).hasValue(1);
        assertThat(tunnels()).isEqualTo(180);

        Files.writeString(season, Files.readString(season).replace("count = 180", "count = 7"));
        assertThat(tunnels()).isEqualTo(7);
        assertThat(planned).hasValue(2);
    }

    @Test
    void aChangedWeatherFileCountsToo() throws IOException {
        desk.openPath(season.toString());
        Path weather = season.resolveSibling("tansy-lane-weather.csv");
        String text = Files.readString(weather);
        Files.writeString(weather, text.substring(0, text.indexOf("2015-03-10")));
        desk.findCurrent();
        assertThat(planned).hasValue(2);
    }

    @Test
    void aSeasonForTheDayOneAsksIsPlannedAgainTheNextDay() throws IOException {
        Files.writeString(season, Files.readString(season).replace("today = 2015-03-10", "# today"));
        desk.openPath(season.toString());
        assertThat(today()).isEqualTo("2015-03-10");
        now = now.plusSeconds(86_400);
        assertThat(today()).isEqualTo("2015-03-11");
        assertThat(planned).hasValue(2);
    }

    @Test
    void anUploadIsKeptWithTheFilesItNamesAndNeedsNoFileOnDisk() throws IOException {
        Map<String, byte[]> files = uploads();
        files.put("never-named.csv", "x".getBytes(StandardCharsets.UTF_8));
        String text =
                Files.readString(season).replace("[\"tansy-lane-weather.csv\"]", "[\"../w/tansy-lane-weather.csv\"]");
        files.put("tansy-lane.toml", text.getBytes(StandardCharsets.UTF_8));
        desk.openUpload("tansy-lane.toml", files);
        Files.delete(season.resolveSibling("tansy-lane-weather.csv"));
        Files.delete(season);

        desk = desk();
        OpenSeason kept = desk.findCurrent().orElseThrow();
        assertThat(kept.demo()).isFalse();
        assertThat(kept.answer().inputs().nests()).extracting(Nests::count).containsExactly(180);
    }

    @Test
    void anUploadNeverReadsAFileOfThisComputer() throws IOException {
        Map<String, byte[]> files = uploads();
        Path weather = season.resolveSibling("tansy-lane-weather.csv");
        files.remove(weather.getFileName().toString());
        String text = Files.readString(season)
                .replace("[\"tansy-lane-weather.csv\"]", "[\"" + weather.toAbsolutePath() + "\"]");
        files.put("tansy-lane.toml", text.getBytes(StandardCharsets.UTF_8));
        assertThatThrownBy(() -> desk.openUpload("tansy-lane.toml", files))
                .isInstanceOfSatisfying(Refusal.class, refusal -> {
                    assertThat(refusal.code()).isEqualTo("NY-FILE-MISSING");
                    assertThat(refusal.place()).startsWith("tansy-lane.toml:");
                });
        assertThat(desk.list()).isEmpty();
    }

    @Test
    void whatCannotBePlannedIsNotKept() throws IOException {
        Files.writeString(season, Files.readString(season).replace("females = 120", "females = -1"));
        assertThatThrownBy(() -> desk.openPath(season.toString()))
                .isInstanceOfSatisfying(
                        Refusal.class,
                        refusal -> assertThat(refusal.place()).containsPattern("tansy-lane\\.toml:\\d+:\\d+"));
        assertThatThrownBy(() -> desk.openPath("")).isInstanceOf(Refusal.class);
        assertThatThrownBy(() -> desk.openPath("/")).isInstanceOf(Refusal.class);
        assertThatThrownBy(() -> desk.openPath("no\0path")).isInstanceOf(Refusal.class);
        assertThatThrownBy(() -> desk.openAgain("unknown")).isInstanceOf(Refusal.class);
        assertThat(desk.list()).isEmpty();
        assertThat(desk.findCurrent()).isEmpty();
    }

    @Test
    void anEarlierSeasonComesBack() {
        desk.openDemo();
        desk.openPath(season.toString());
        assertThat(desk.list()).extracting(EarlierSeason::current).containsExactly(true, false);
        desk.openAgain(desk.list().get(1).id());
        assertThat(desk.findCurrent().orElseThrow().demo()).isTrue();
        assertThat(desk.list()).extracting(EarlierSeason::name).containsExactly("tansy-lane.toml", season.toString());
    }

    private int tunnels() {
        return desk.findCurrent().orElseThrow().answer().inputs().nests().get(0).count();
    }

    private String today() {
        return desk.findCurrent().orElseThrow().answer().plan().today().toString();
    }

    private Map<String, byte[]> uploads() throws IOException {
        Map<String, byte[]> files = new HashMap<>();
        for (String name : new String[] {"tansy-lane.toml", "tansy-lane-weather.csv"}) {
            files.put(name, Files.readAllBytes(season.resolveSibling(name)));
        }
        return files;
    }

    private SeasonDesk desk() {
        InstantSource source = () -> now;
        Clock clock = source.withZone(ZoneOffset.UTC);
        PlanService plans = new PlanService(CatalogueFiles.load(), (inputs, species) -> {
            planned.incrementAndGet();
            return Planner.plan(inputs, species);
        });
        return new SeasonDesk(new SeasonShelf(Database.open(folder), clock), plans, clock);
    }
}
