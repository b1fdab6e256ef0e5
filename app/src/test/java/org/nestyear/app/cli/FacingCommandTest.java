package org.nestyear.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.nestyear.app.JsonSchemas;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The command {@code facing} on the demo's invented site. */
class FacingCommandTest {
    @TempDir
    Path folder;

    private String season = "";

    @BeforeEach
    void writeTheDemo() {
        Path into = folder.resolve("my-season");
        assertThat(Run.of("demo", "--write", into.toString()).exit()).isZero();
        season = into.resolve("tansy-lane.toml").toString();
    }

    @Test
    void eightWaysAreRankedAndTheOwnIsMarked() {
        Run run = Run.of("facing", season, "--json");
        assertThat(run.exit()).as(run.err()).isZero();
        JsonSchemas.assertValid("facing.schema.json", run.out());
        JsonNode facings = JsonMapper.shared().readTree(run.out()).get("facings");
        assertThat(facings.size()).isEqualTo(8);
        double before = Double.POSITIVE_INFINITY;
        int own = 0;
        for (JsonNode facing : facings) {
            assertThat(facing.get("morning_wh_m2").asDouble()).isLessThanOrEqualTo(before);
            before = facing.get("morning_wh_m2").asDouble();
            own += facing.get("now").asBoolean() ? 1 : 0;
        }
        assertThat(own).isEqualTo(1);
        assertThat(facings.get(0).get("faces_deg").asDouble()).isEqualTo(90);
        assertThat(Run.of("facing", season).out().replace('\n', ' '))
                .startsWith("Most morning sun falls on a front that looks to the east (90°)")
                .contains("as it looks now", "over the skyline sighted in the file");
    }

    @Test
    void aDayMayBeAskedForAndAWrongOneIsRefused() {
        assertThat(Run.of("facing", season, "--on", "2015-06-21").out()).contains("Clear days: Sun 21 June 2015;");
        Run wrong = Run.of("facing", season, "--on", "midsummer");
        assertThat(wrong.exit()).isEqualTo(2);
        assertThat(wrong.err()).contains("--on is \"midsummer\"; expected a date");
        assertThat(Run.of("facing", season + "x").exit()).isEqualTo(2);
    }
}
