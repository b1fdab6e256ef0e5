package org.nestyear.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.nestyear.app.JsonSchemas;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class EnemiesCommandTest {
    @Test
    void allAreListed() {
        JsonNode all = json("enemies", "--json");
        assertThat(all.get("enemies").size()).isGreaterThan(12);
        String text = text("enemies");
        for (JsonNode enemy : all.get("enemies")) {
            assertThat(text)
                    .contains(enemy.get("id").asString() + ": "
                            + enemy.get("looks").asString());
        }
    }

    /** Days of a warming at 29.4 °C as the Idaho bulletin CIS 538 prints them; share of Colorado cells by our computation. */
    @Test
    void oneIsToldInFull() {
        assertThat(text("enemies", "Pteromalus")).contains("from day 10", "at least 2 days before the first male bee");
        assertThat(text("enemies", "monodontomerus")).contains("from day 14", "1.7 and 2.0 % of mason bee cells");
        assertThat(text("enemies", "Cacoxenus"))
                .startsWith("Houdini fly (Cacoxenus indagator), an enemy of mason bees.")
                .contains("Looks:", "When:", "Do:", "Never:", "Caution:", "How well this is known:");
        assertThat(json("enemies", "mites", "--json").at("/enemies/0/id").asString())
                .isEqualTo("pollen-mites");
    }

    @Test
    void beesAndSeasonLimitTheList() {
        for (JsonNode enemy : json("enemies", "--bees", "leafcutter", "--when", "winter", "--json")
                .get("enemies")) {
            assertThat(enemy.get("bees").toString()).contains("leafcutter");
            assertThat(enemy.get("seasons").toString()).contains("winter");
        }
        assertThat(json("enemies", "chalkbrood", "--json").get("enemies").size())
                .isEqualTo(2);
        assertThat(json("enemies", "chalkbrood", "--bees", "mason", "--json")
                        .get("enemies")
                        .size())
                .isEqualTo(1);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            enemies catoxenus                | nestyear: "catoxenus" is not an enemy on the list; expected one of chalkbrood-mason | Maybe "cacoxenus" was meant.
            enemies mice --when summer       | nestyear: "mice" is not an enemy of those bees at that time; expected fewer limits. | Maybe leave --bees and --when out.
            enemies --bees honey             | nestyear: --bees is "honey"; expected one of mason, leafcutter. |
            """)
    void unknownNamesAreNamed(String arguments, String sentence, String advice) {
        Run run = Run.of(arguments.split(" ", -1));
        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).startsWith(sentence).contains("[NY-USAGE]");
        if (advice != null) {
            assertThat(run.err()).contains(advice);
        }
    }

    private static String text(String... words) {
        Run run = Run.of(words);
        assertThat(run.exit()).as(run.err()).isZero();
        assertThat(run.out().lines()).allMatch(line -> line.length() <= 80);
        return run.out().replaceAll("\\s+", " ");
    }

    private static JsonNode json(String... words) {
        Run run = Run.of(words);
        assertThat(run.exit()).as(run.err()).isZero();
        JsonSchemas.assertValid("enemies.schema.json", run.out());
        return JsonMapper.shared().readTree(run.out());
    }
}
