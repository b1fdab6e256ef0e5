package org.nestyear.app.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.nestyear.app.JsonSchemas;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class TunnelsCommandTest {
    /**
     * By hand from the catalogue: 120 × 0.93 come out, 30 to 65 % stay (McCabe et al. 2024), two tunnels each (common
     * practice): 146. Filled: 50 females × 16 cells (Giejdasz et al. 2016) / 8.8 cells a tunnel of 152 mm. 7.5 × 152 mm is
     * the size of SARE Handbook 11.
     */
    @Test
    void tunnelsForAHundredAndTwentyFemales() {
        JsonNode answer = json("tunnels", "--species", "Osmia lignaria", "--females", "120", "--json");
        assertThat(answer.get("tunnels_needed").asInt()).isEqualTo(146);
        assertThat(answer.get("low").asInt()).isEqualTo(92);
        assertThat(answer.get("high").asInt()).isEqualTo(291);
        assertThat(answer.get("hole_width_mm").asDouble()).isEqualTo(7.5);
        assertThat(answer.get("length_mm").asDouble()).isEqualTo(152);
        assertThat(answer.at("/nesting_females/value").asDouble()).isEqualTo(50.22, within(0.01));
        assertThat(answer.get("basis").size()).isGreaterThan(8);
    }

    /**
     * By hand: 80 % live (Fairey et al. 2003), 69 % stay (Schmolke et al. 2023): 100 cells give 55 females (28 to 64 at the
     * ends), two tunnels for each that may stay: 128. A second brood of 10 to 50 %: 55.2 × 15 × 0.35 × 0.8 × 0.69 × 2 × share.
     */
    @Test
    void leafcuttersCountBothBroods() {
        JsonNode answer = json("tunnels", "--species", "Megachile rotundata", "--females", "100", "--json");
        assertThat(answer.at("/nesting_females/value").asDouble()).isEqualTo(55.2, within(0.01));
        assertThat(answer.get("tunnels_needed").asInt()).isEqualTo(128);
        assertThat(answer.at("/second_brood_tunnels/low").asInt()).isEqualTo(32);
        assertThat(answer.at("/second_brood_tunnels/high").asInt()).isEqualTo(160);
        assertThat(Run.of("tunnels", "--species", "Megachile rotundata", "--females", "100")
                        .out())
                .contains("female cells", "fly the same summer");
    }

    /** Practice rule: 20 tunnels whatever the stock. */
    @Test
    void aFewFemalesStillGetAHouse() {
        JsonNode answer = json("tunnels", "--species", "Osmia cornuta", "--females", "3", "--json");
        assertThat(answer.get("tunnels_needed").asInt()).isEqualTo(20);
        assertThat(answer.get("high").asInt()).isEqualTo(20);
    }

    @ParameterizedTest
    @ValueSource(strings = {"Osmia lignaria", "Osmia cornifrons", "Osmia bicornis", "Osmia cornuta"})
    void needGrowsWithTheStock(String species) {
        int before = 0;
        for (int females = 1; females < 3000; females = females * 3 + 1) {
            JsonNode answer = json("tunnels", "--species", species, "--females", "" + females, "--json");
            int needed = answer.get("tunnels_needed").asInt();
            assertThat(needed).isGreaterThanOrEqualTo(before);
            assertThat(answer.get("low").asInt()).isLessThanOrEqualTo(needed);
            assertThat(answer.get("high").asInt()).isGreaterThanOrEqualTo(needed);
            before = needed;
        }
        assertThat(before).isGreaterThan(1000);
    }

    @Test
    void theAnswerComesFirst() {
        Run run = Run.of("tunnels", "--species", "Osmia lignaria", "--females", "120", "--units", "us");
        assertThat(run.exit()).isZero();
        assertThat(run.out().lines()).allMatch(line -> line.length() <= 80);
        assertThat(run.out().replaceAll("\\s+", " "))
                .startsWith(
                        "Hang 146 tunnels, 5/16 in wide and 6 in deep, for 120 female cocoons of the blue orchard bee")
                .contains("33 to 73 are likely to stay and nest, most likely about 50", "How well this is known:");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            Osmia lignria  | 12  | nestyear: "Osmia lignria" is not a species of the catalogue; expected one of
            Osmia lignaria | 0   | nestyear: --females is "0"; expected a whole number from 1 to 10,000,000.
            Osmia lignaria | few | nestyear: --females is "few"; expected a whole number
            """)
    void wrongArgumentsAreNamed(String species, String females, String sentence) {
        Run run = Run.of("tunnels", "--species", species, "--females", females);
        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).startsWith(sentence).contains(" [NY-USAGE]");
    }

    private static JsonNode json(String... arguments) {
        Run run = Run.of(arguments);
        assertThat(run.exit()).as(run.err()).isZero();
        JsonSchemas.assertValid("tunnels.schema.json", run.out());
        return JsonMapper.shared().readTree(run.out());
    }
}
