package org.nestyear.app.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.nestyear.app.JsonSchemas;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class RangeCommandTest {
    /** Greenleaf et al. 2007, table 1, by hand for 2.9 mm: 1.561 and 0.718 km. */
    @Test
    void homingAndWorkComeOut() {
        JsonNode answer = json("range", "--span-mm", "2.9", "--json");
        assertThat(answer.get("max_km").asDouble()).isEqualTo(1.561, within(6e-4));
        assertThat(answer.get("typical_km").asDouble()).isEqualTo(0.718, within(6e-4));
        assertThat(answer.get("working_m").asDouble()).isEqualTo(150);
        assertThat(answer.get("size_watched_at_work").asBoolean()).isTrue();
        assertThat(answer.get("basis")).hasSize(9);
        assertThat(answer.at("/typical_range_km/low").asDouble()).isLessThan(0.718);
        assertThat(answer.at("/typical_range_km/high").asDouble()).isGreaterThan(0.718);
    }

    @Test
    void smallBeesWorkNoFartherThanTheyFindHome() {
        JsonNode answer = json("range", "--span-mm", "1", "--json");
        assertThat(answer.get("working_m").asDouble()).isEqualTo(43.4, within(0.1));
        assertThat(answer.get("size_watched_at_work").asBoolean()).isFalse();
        assertThat(text("range", "--span-mm", "1"))
                .contains("A bee so small finds home from no farther.", "No bee of that size was watched at work");
    }

    /** The answer begins with where bees work, not with the larger distance they find home from. */
    @Test
    void workComesFirst() {
        assertThat(text("range", "--span-mm", "2.9")).startsWith("Count on flowers within 150 m of the nest.");
        assertThat(text("range", "--span-mm", "2.9", "--units", "us")).startsWith("Count on flowers within 492 ft");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            14   | --span-mm is "14"; expected from 0.3 to 10 mm between the wing bases.
            0.1  | --span-mm is "0.1"; expected from 0.3 to 10 mm
            0    | --span-mm is "0"; expected more than nothing.
            2,9  | --span-mm is "2,9"; expected a length with its unit
            wide | --span-mm is "wide"; expected a length with its unit
            """)
    void wrongSpansAreNamed(String span, String sentence) {
        Run run = Run.of("range", "--span-mm", span);
        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.err()).startsWith("nestyear: " + sentence).contains(" [NY-USAGE]");
    }

    private static String text(String... arguments) {
        Run run = Run.of(arguments);
        assertThat(run.exit()).isZero();
        assertThat(run.out().lines()).allMatch(line -> line.length() <= 80);
        return run.out().replaceAll("\\s+", " ");
    }

    private static JsonNode json(String... arguments) {
        Run run = Run.of(arguments);
        assertThat(run.exit()).as(run.err()).isZero();
        JsonSchemas.assertValid("range.schema.json", run.out());
        return JsonMapper.shared().readTree(run.out());
    }
}
