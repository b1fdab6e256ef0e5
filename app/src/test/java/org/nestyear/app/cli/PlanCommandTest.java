package org.nestyear.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.nestyear.app.JsonSchemas;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class PlanCommandTest {
    private static final Path DEMO = Path.of("src/main/resources/demo/tansy-lane.toml");

    @Test
    void theAnswerComesFirstAndEverythingFollowsInOrder() {
        Run run = Run.of("plan", DEMO.toString());

        assertThat(run.exit()).isZero();
        assertThat(run.err()).isEmpty();
        assertThat(run.out().lines().findFirst().orElseThrow()).contains("cocoons");
        assertThat(run.out())
                .containsSubsequence(
                        "2015",
                        "Tansy Lane orchard: blue orchard bee (Osmia lignaria), planned for Tue 10 March.",
                        "3 real weather years stand behind this",
                        "borrowed for want of its own",
                        "JOBS",
                        "[put-out]",
                        "WHAT OTHER DATES COST",
                        "best",
                        "The rule of thumb says",
                        "and costs",
                        "The best fixed calendar date says",
                        "WHAT TO EXPECT",
                        "FINDINGS",
                        "SOURCES",
                        "Fingerprint");
        assertThat(run.out().lines()).allMatch(line -> line.length() <= 80, "at most 80 characters");
        assertThat(run.out()).doesNotContain("NaN", "Infinity", "{}", "null");
    }

    @Test
    void theJsonKeepsToItsSchemaAndHangsTogether() {
        JsonNode plan = json("plan", DEMO.toString(), "--json");

        assertThat(plan.get("today").asString()).isEqualTo("2015-03-10");
        assertThat(plan.get("real_years").asInt()).isEqualTo(3);
        JsonNode release = plan.get("release");
        assertThat(Stream.of("females", "males")
                        .map(sex -> release.get("releases")
                                .valueStream()
                                .mapToInt(portion -> portion.get(sex).asInt())
                                .sum()))
                .containsExactly(120, 210);
        String best = release.get("best").get("date").asString();
        assertThat(best)
                .isGreaterThanOrEqualTo(release.get("best").get("from").asString())
                .isLessThanOrEqualTo(release.get("best").get("to").asString());
        List<String> known = plan.get("basis")
                .valueStream()
                .map(entry -> entry.get("id").asString())
                .toList();
        assertThat(known).doesNotHaveDuplicates();
        List<String> named = Stream.of("jobs", "findings")
                .flatMap(list -> plan.get(list).valueStream())
                .flatMap(each -> each.get("basis").valueStream())
                .map(JsonNode::asString)
                .toList();
        assertThat(named).isNotEmpty().allMatch(known::contains);
    }

    @Test
    void weatherAfterTodayIsNeverRead(@TempDir Path folder) throws IOException {
        Files.copy(DEMO, folder.resolve("tansy-lane.toml"));
        List<String> known = Files.readAllLines(DEMO.resolveSibling("tansy-lane-weather.csv")).stream()
                .filter(line -> line.startsWith("date") || line.compareTo("2015-03-11") < 0)
                .toList();
        assertThat(known).hasSize(1 + 366 + 365 + 365 + 69);
        Files.write(folder.resolve("tansy-lane-weather.csv"), known);

        Run cut = Run.of("plan", folder.resolve("tansy-lane.toml").toString(), "--json");

        assertThat(cut.out())
                .isEqualTo(Run.of("plan", DEMO.toString(), "--json").out());
    }

    @Test
    void aimAndTodayCountBeforeTheFile() {
        JsonNode brood = json("plan", DEMO.toString(), "--json", "--aim", "brood", "--today", "2015-03-20");
        JsonNode asWritten = json("plan", DEMO.toString(), "--json");

        assertThat(brood.get("release").get("goal").asString()).isEqualTo("brood");
        assertThat(brood.get("today").asString()).isEqualTo("2015-03-20");
        assertThat(brood.get("fingerprint").asString())
                .isNotEqualTo(asWritten.get("fingerprint").asString());
    }

    @Test
    void usUnitsLeaveNoMetricOnesInTheJobs() {
        Run run = Run.of("plan", DEMO.toString(), "--units", "us");

        // Citations keep the units of their authors.
        String ownWords = run.out().substring(0, run.out().indexOf("SOURCES"));
        assertThat(ownWords).contains(" in ", " ft ", " °F").doesNotContain(" mm", " °C", " m ");
    }

    @Test
    void aJobTellsWhy() {
        Run run = Run.of("plan", DEMO.toString(), "--why", "put-out");

        assertThat(run.exit()).isZero();
        assertThat(run.out())
                .containsSubsequence("[put-out]", "WHY", "NUMBERS READ FOR IT")
                .doesNotContain("SOURCES");
        Run unknown = Run.of("plan", DEMO.toString(), "--why", "putout");
        assertThat(unknown.exit()).isEqualTo(2);
        assertThat(unknown.err())
                .contains("this plan has no job \"putout\"; expected one of")
                .contains("Maybe \"put-out\" was meant.");
    }

    @Test
    void outsideItsRangeThereIsNoAnswer(@TempDir Path folder) throws IOException {
        Files.copy(DEMO.resolveSibling("tansy-lane-weather.csv"), folder.resolve("tansy-lane-weather.csv"));
        Path south = folder.resolve("south.toml");
        Files.writeString(south, Files.readString(DEMO).replace("latitude = 40.78", "latitude = -40.78"));

        Run run = Run.of("plan", south.toString());

        assertThat(run.exit()).isEqualTo(3);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains("[NY-PLAN-SOUTH]");
    }

    @Test
    void theDemoSaysThatItIsInvented() {
        assertThat(Run.of("demo").out()).startsWith("This season is invented; only its weather is real.\n");
        Run json = Run.of("demo", "--json");
        assertThat(json.out())
                .isEqualTo(Run.of("plan", DEMO.toString(), "--json").out());
        assertThat(json.err()).contains("invented");
    }

    @Test
    void theDemoCanBeWrittenOnceAndPlanned(@TempDir Path folder) throws IOException {
        Path target = folder.resolve("mine");
        Run written = Run.of("demo", "--write", target.toString());

        assertThat(written.exit()).isZero();
        Path season = target.resolve("tansy-lane.toml");
        assertThat(written.out()).isEqualTo(season + "\n" + target.resolve("tansy-lane-weather.csv") + "\n");
        assertThat(season).hasSameBinaryContentAs(DEMO);
        assertThat(Run.of("plan", season.toString()).exit()).isZero();
        Run again = Run.of("demo", "--write", target.toString());
        assertThat(again.exit()).isEqualTo(2);
        assertThat(again.err()).startsWith(season + ": ").contains("[NY-FILE-EXISTS]");
    }

    private static JsonNode json(String... arguments) {
        Run run = Run.of(arguments);
        assertThat(run.err()).isEmpty();
        assertThat(run.exit()).isZero();
        JsonSchemas.assertValid("plan.schema.json", run.out());
        return JsonMapper.shared().readTree(run.out());
    }
}
