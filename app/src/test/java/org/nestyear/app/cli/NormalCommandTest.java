package org.nestyear.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.nestyear.app.JsonSchemas;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The command {@code normal} on the demo's invented season. */
class NormalCommandTest {
    @TempDir
    Path folder;

    @BeforeEach
    void writeTheDemo() {
        assertThat(Run.of("demo", "--write", folder.resolve("my-season").toString())
                        .exit())
                .isZero();
    }

    private Path season() {
        return folder.resolve("my-season/tansy-lane.toml");
    }

    private Run normal(String released, String on, String saw, String... more) {
        List<String> all = new ArrayList<>(
                List.of("normal", season().toString(), "--released", released, "--on", on, "--saw", saw));
        all.addAll(List.of(more));
        return Run.of(all.toArray(String[]::new));
    }

    private JsonNode json(String released, String on, String saw) {
        Run run = normal(released, on, saw, "--json");
        assertThat(run.exit()).as(run.err()).isZero();
        JsonSchemas.assertValid("normal.schema.json", run.out());
        return JsonMapper.shared().readTree(run.out());
    }

    private static List<String> causes(JsonNode answer) {
        List<String> ids = new ArrayList<>();
        answer.get("causes").forEach(cause -> ids.add(cause.get("id").asString()));
        return ids;
    }

    /** What is normal on the first day grows unusual, and never the other way. */
    @ParameterizedTest
    @CsvSource({"nothing, look-into-the-box", "males, look-into-the-box", "females, no-mud"})
    void waitingGrowsUnusual(String saw, String cause) {
        double before = 1;
        for (String on : List.of("2015-03-20", "2015-04-05", "2015-04-15", "2015-05-20")) {
            JsonNode answer = json("2015-03-20", on, saw);
            assertThat(answer.get("chance").asDouble()).isLessThanOrEqualTo(before);
            before = answer.get("chance").asDouble();
        }
        assertThat(json("2015-03-20", "2015-03-20", saw).get("verdict").asString())
                .isEqualTo("normal");
        JsonNode late = json("2015-03-20", "2015-05-20", saw);
        assertThat(late.get("verdict").asString()).isEqualTo("unusual");
        assertThat(causes(late)).contains(cause);
    }

    /** Males lead: where males are about and no female, that is normal for longer than seeing nothing at all. */
    @Test
    void malesComeFirst() {
        JsonNode nothing = json("2015-03-20", "2015-04-10", "nothing");
        JsonNode males = json("2015-03-20", "2015-04-10", "males");
        JsonNode females = json("2015-03-20", "2015-04-10", "females");
        assertThat(males.get("chance").asDouble())
                .isGreaterThan(nothing.get("chance").asDouble());
        assertThat(females.get("chance").asDouble())
                .isGreaterThan(males.get("chance").asDouble());
    }

    @Test
    void aHouseThatCannotServeIsToldFirst() throws IOException {
        String text = Files.readString(season());
        Files.writeString(
                season(),
                text.replaceFirst("hole_width_mm = [0-9.]+", "hole_width_mm = 4")
                        .replaceFirst("faces_deg = [0-9.]+", "faces_deg = 320"));
        JsonNode answer = json("2015-04-10", "2015-05-10", "females");
        assertThat(causes(answer).get(0)).isEqualTo("no-tunnel-fits");
        assertThat(causes(answer)).contains("front-without-morning-sun", "flew-off", "robbed");
    }

    @Test
    void itReadsAsASentence() {
        String words = normal("2015-04-10", "2015-04-12", "males").out().replace('\n', ' ');
        assertThat(words)
                .startsWith("Day 2 after putting them out, males and no female yet: that is normal, it happens in ")
                .contains("only then would it be unusual.");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            2015-05-01 | 2015-04-20 | males | after the day asked about
            2014-05-01 | 2015-04-20 | males | expected the release of this season
            2015-04-10 | 2015-04-20 | frogs | expected one of nothing, males, females
            2015-04-10 | soon | males | expected a date
            """)
    void wrongQuestionsGetOneSentence(String released, String on, String saw, String part) {
        Run run = normal(released, on, saw);
        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains(part);
    }
}
