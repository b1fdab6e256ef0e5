package org.nestyear.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.nestyear.app.JsonSchemas;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class OrchardCommandTest {
    /**
     * SARE Handbook 11, chapter 6: 250 nesting females an acre of apple; Bosch & Kemp 2001: 250 to 300. Back through 93 %
     * out and 45 (30 to 65) % that stay, by hand: 250 / 0.93 / 0.45 = 597.4,
     * rounded up; 250 / 0.93 / 0.65 = 413.6; 300 / 0.93 / 0.30 = 1,075.3.
     */
    @Test
    void anAcreOfApple() {
        JsonNode answer = json("orchard", "--crop", "apple", "--area", "1acre", "--json");
        assertThat(answer.get("females").asInt()).isEqualTo(250);
        assertThat(answer.get("females_high").asInt()).isEqualTo(300);
        assertThat(answer.get("female_cocoons").asInt()).isEqualTo(598);
        assertThat(answer.get("female_cocoons_low").asInt()).isEqualTo(414);
        assertThat(answer.get("female_cocoons_high").asInt()).isEqualTo(1076);
        assertThat(answer.get("cocoons").asInt())
                .isEqualTo(answer.get("female_cocoons").asInt()
                        + answer.get("male_cocoons").asInt());
        assertThat(answer.get("tunnels").asInt()).isEqualTo(500);
        assertThat(answer.get("basis").toString()).contains("rate_apple_osmia_lignaria", "settling", "never_out_f");
    }

    /** The same orchard in other words: 1 acre is 4,046.86 m²; 200 trees at 5 × 4.0469 m stand on an acre. */
    @Test
    void unitsAndTreesAgree() {
        int females = json("orchard", "--crop", "apple", "--area", "1acre", "--json")
                .get("females")
                .asInt();
        assertThat(json("orchard", "--crop", "Apple", "--area", "4046.86m2", "--json")
                        .get("females")
                        .asInt())
                .isEqualTo(females);
        assertThat(json("orchard", "--crop", "apple", "--trees", "200", "--spacing", "5x4.0469m", "--json")
                        .get("females")
                        .asInt())
                .isEqualTo(females);
    }

    /** Vicens & Bosch 2000, Environ. Entomol. 29:235: 530 nesting females a hectare of apple are enough. */
    @Test
    void aHectareWithTheEuropeanOrchardBee() {
        JsonNode answer = json("orchard", "--crop", "apple", "--area", "1ha", "--species", "Osmia cornuta", "--json");
        assertThat(answer.get("females").asInt()).isEqualTo(530);
    }

    /**
     * SARE Handbook 11, chapter 7: 30,000 to 40,000 bees an acre of established seed alfalfa, 74,000 to 100,000 a hectare, of
     * which 7 in 20 are females; of X-rayed cells 76 to 83 % live (Fairey et al. 2003). Cells to put out are then 74,000 to
     * 100,000 / 0.8 in the middle of both ranges: 108,750.
     */
    @Test
    void aHectareOfSeedAlfalfa() {
        JsonNode answer =
                json("orchard", "--crop", "alfalfa", "--area", "1ha", "--species", "Megachile rotundata", "--json");
        assertThat(answer.get("cocoons").asDouble()).isCloseTo(108_750, Percentage.withPercentage(1));
        assertThat(Run.of("orchard", "--crop", "alfalfa", "--area", "1ha", "--species", "Megachile rotundata")
                        .out())
                .contains("female cells", "over the field");
    }

    @Test
    void treesWithoutSpacingWidenTheRange() {
        JsonNode answer = json("orchard", "--crop", "apple", "--trees", "40", "--json");
        assertThat(answer.get("trees").asInt()).isEqualTo(40);
        assertThat(answer.get("females_high").asDouble()
                        / answer.get("females_low").asDouble())
                .isGreaterThan(8);
        Run run = Run.of("orchard", "--crop", "apple", "--trees", "40");
        assertThat(run.out().lines()).allMatch(line -> line.length() <= 80);
        assertThat(run.out().replaceAll("\\s+", " "))
                .startsWith("For 40 apple trees about 50 (13 to 178) females of the blue orchard bee")
                .contains("with --spacing the range is much narrower", "published advice");
    }

    /** SARE Handbook 11: rates for cherry and pear are not established. Nothing is made up for them or any other crop. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            cherry | Osmia lignaria | nestyear: There is no standard rate for cherry: handbooks say that none is established |
            pear   | Osmia cornuta  | nestyear: There is no standard rate for pear: handbooks say that none is established |
            quince | Osmia lignaria | nestyear: There is no standard rate for quince; rates were found for apple, almond, alfalfa, canola, blueberry. |
            aple   | Osmia lignaria | nestyear: There is no standard rate for aple; | Maybe "apple" was meant.
            apple  | Osmia bicornis | nestyear: There is no standard rate for apple with Osmia bicornis; one was found for Osmia lignaria, Osmia cornifrons, Osmia cornuta. |
            """)
    void noStandardRate(String crop, String species, String sentence, String advice) {
        Run run = Run.of("orchard", "--crop", crop, "--area", "1ha", "--species", species);
        assertThat(run.exit()).isEqualTo(3);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).startsWith(sentence).contains(" [NY-ORCHARD-NO-RATE]");
        assertThat(run.err().lines().skip(1).toList()).isEqualTo(advice == null ? List.of() : List.of(advice));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            orchard --crop apple | it is not clear how large the orchard is; expected either --area AREA, or --trees N
            orchard --crop apple --area 1ha --trees 3 | it is not clear how large the orchard is
            orchard --crop apple --area 5 | --area is "5"; expected an area with its unit, such as 0.5ha, 2acre, 300m2 or 1200cm2.
            orchard --crop apple --area 0ha | --area is "0ha"; expected more than nothing.
            orchard --crop apple --area 1e9ha | --area is "1e9ha"; expected an area with its unit
            orchard --crop apple --trees 0 | --trees is "0"; expected a whole number from 1 to 10,000,000.
            orchard --crop apple --trees 5 --spacing 5 | --spacing is "5"; expected an area with its unit
            orchard --crop apple --trees 5 --spacing 90x90m | --spacing is "90x90m"; expected from 0.5 to 1,000 m2 for each tree
            orchard --crop 7 --trees 5 | --crop is "7"; expected a crop in a word, such as apple.
            """)
    void wrongOrchardsAreNamed(String arguments, String sentence) {
        Run run = Run.of(arguments.split(" ", -1));
        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).startsWith("nestyear: " + sentence).contains(" [NY-USAGE]");
    }

    private static JsonNode json(String... arguments) {
        Run run = Run.of(arguments);
        assertThat(run.exit()).as(run.err()).isZero();
        JsonSchemas.assertValid("orchard.schema.json", run.out());
        return JsonMapper.shared().readTree(run.out());
    }
}
