package org.nestyear.app.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.nestyear.app.JsonSchemas;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The command {@code winter} on invented logs. */
class WinterCommandTest {
    private static final String BEES = "Osmia bicornis";

    @TempDir
    Path folder;

    /** A log from 1 December on, one reading every two hours. */
    private String log(int days, IntToDoubleFunction celsiusOfDay) throws IOException {
        List<String> lines = new ArrayList<>(List.of("time,temp_c"));
        LocalDateTime time = LocalDateTime.of(2025, 12, 1, 0, 0);
        for (int step = 0; step <= days * 12; step++) {
            lines.add(time.plusHours(2L * step) + "," + celsiusOfDay.applyAsDouble(Math.min(step / 12, days - 1)));
        }
        return Files.write(folder.resolve("log.csv"), lines).toString();
    }

    private static Run winter(String log, String species, String... more) {
        List<String> all = new ArrayList<>(List.of("winter", "--species", species, "--log", log));
        all.addAll(List.of(more));
        return Run.of(all.toArray(String[]::new));
    }

    private static JsonNode json(String log, String species, String... more) {
        List<String> all = new ArrayList<>(List.of(more));
        all.add("--json");
        Run run = winter(log, species, all.toArray(String[]::new));
        assertThat(run.exit()).as(run.err()).isZero();
        JsonSchemas.assertValid("winter.schema.json", run.out());
        return JsonMapper.shared().readTree(run.out());
    }

    private static List<String> findings(JsonNode answer) {
        List<String> ids = new ArrayList<>();
        answer.get("findings").forEach(finding -> ids.add(finding.get("id").asString()));
        return ids;
    }

    @Test
    void aSteadyFridgeCountsItsDaysAndAsksForNothing() throws IOException {
        JsonNode answer = json(log(60, day -> 3), BEES);
        assertThat(answer.get("chill_days").asDouble()).isEqualTo(60);
        // 0.0255 e^(0.11 × 3) = 0.0355 % a day of 14.7 %.
        assertThat(answer.get("body_fat_spent_percent").asDouble()).isCloseTo(14.48, within(0.05));
        assertThat(answer.get("days_left").asDouble()).isEqualTo(210);
        assertThat(answer.get("days_left_by").asString()).isEqualTo("longest store tested");
        assertThat(findings(answer)).containsExactly("chill-not-yet");
        assertThat(winter(log(60, day -> 3), BEES).out())
                .startsWith("Nothing in the log asks for action. 60 days of cold");
    }

    @Test
    void coldBeforeTheLogIsCounted() throws IOException {
        JsonNode answer = json(log(10, day -> 3), BEES, "--before-days", "100", "--before-c", "3");
        assertThat(answer.get("chill_days").asDouble()).isEqualTo(110);
        assertThat(answer.get("days_left").asDouble()).isEqualTo(160);
        assertThat(findings(answer)).containsExactly("handle-briefly");
    }

    @ParameterizedTest
    @CsvSource({
        "3, 12, fridge-far-too-warm",
        "8, 8, fridge-too-warm",
        "3, -4, fridge-colder-than-tested",
    })
    void aFridgeThatStraysIsFound(double first, double last, String expected) throws IOException {
        assertThat(findings(json(log(20, day -> day < 18 ? first : last), BEES)))
                .contains(expected);
    }

    @Test
    void longWarmthSpendsTheFat() throws IOException {
        JsonNode answer = json(log(165, day -> 7), "Osmia cornuta");
        assertThat(findings(answer)).contains("fridge-too-warm-too-long", "fat-nearly-spent");
        assertThat(answer.get("days_left").asDouble()).isZero();
        assertThat(findings(json(log(272, day -> 1), BEES))).contains("fridge-too-long");
    }

    @Test
    void limitsOfTheFridgeAreForTheFridgeAlone() throws IOException {
        String log = log(120, day -> day < 118 ? -6 : 12);
        assertThat(findings(json(log, BEES))).contains("fridge-far-too-warm", "fridge-colder-than-tested");
        assertThat(findings(json(log, BEES, "--kept", "shed")))
                .contains("mild-late-winter")
                .doesNotContain("fridge-far-too-warm", "fridge-colder-than-tested");
    }

    /** 30 days at 20 °C are 150 degree-days above 15 °C: 0.05 × 150 − 4.63 = 2.9 %. */
    @Test
    void aWarmAutumnOfAdultsCostsLives() throws IOException {
        String log = log(60, day -> day < 30 ? 20 : 3);
        JsonNode answer = json(log, "Osmia lignaria", "--cold", "2025-12-31");
        assertThat(findings(answer)).contains("warm-before-the-cold");
        assertThat(answer.get("chill_days").asDouble()).isEqualTo(30);
        assertThat(winter(log, "Osmia lignaria", "--cold", "2025-12-31").out())
                .contains("150 °C-days above 15 °C: about 3 % more deaths");
    }

    @Test
    void airIsJudgedAndDewForetold() throws IOException {
        String log = log(20, day -> 4);
        assertThat(findings(json(log, BEES, "--rh", "45"))).contains("air-dry");
        assertThat(findings(json(log, BEES, "--rh", "85"))).contains("air-damp");
        assertThat(findings(json(log, BEES, "--rh", "65"))).doesNotContain("air-dry", "air-damp");
        // At 20 °C and 50 % water settles below 9.3 °C (table of the fact sheet, FAO-56 form).
        String[] room = {"--rh", "65", "--room-c", "20", "--room-rh", "50"};
        assertThat(findings(json(log, BEES, room))).contains("wet-on-opening");
        assertThat(winter(log, BEES, room).out()).contains("water settles below 9.3 °C");
    }

    @Test
    void leafcuttersAreJudgedByTheirOwnLimits() throws IOException {
        JsonNode mild = json(log(60, day -> day < 50 ? 19 : 3), "Megachile rotundata");
        assertThat(findings(mild)).contains("autumn-too-warm");
        assertThat(mild.get("body_fat_spent_percent").isNull()).isTrue();
        assertThat(findings(json(log(30, day -> -3), "Megachile rotundata"))).contains("store-freezing");
        assertThat(findings(json(log(60, day -> 12), "Megachile rotundata"))).contains("store-mild-too-long");
        assertThat(findings(json(log(60, day -> 4), "Megachile rotundata"))).isEmpty();
    }

    @Test
    void wrongQuestionsGetOneSentence() throws IOException {
        String log = log(20, day -> 4);
        assertRefused(winter(log, "Osmia"), "Osmia");
        assertRefused(winter(log, BEES, "--before-days", "5"), "--before-days and --before-c together");
        assertRefused(winter(log, BEES, "--room-c", "5"), "--rh, --room-c and --room-rh go together");
        assertRefused(winter(log, BEES, "--kept", "cellar"), "expected one of fridge, shed, outdoors, unopened");
        assertRefused(winter(log, BEES, "--cold", "2025-12-21"), "expected at least a day of cold");
        assertRefused(winter(log, BEES, "--rh", "0"), "expected a number from 1 to 100 per cent");
        assertRefused(winter(folder.resolve("none.csv").toString(), BEES), "NY-FILE-MISSING");
    }

    private static void assertRefused(Run run, String part) {
        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains(part);
    }
}
