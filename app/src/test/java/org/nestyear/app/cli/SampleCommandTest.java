package org.nestyear.app.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.nestyear.app.JsonSchemas;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class SampleCommandTest {
    /** Cannon & Roe's tables: 1,600 in all, 1 %, 99 % → 399. At most 5 % of them, 80, may be opened. */
    @Test
    void thePublishedNumberComesOut() {
        JsonNode answer = json("sample --population 1600 --prevalence 0.01 --confidence 0.99 --json");
        assertThat(answer.get("n").asInt()).isEqualTo(399);
        assertThat(answer.get("ill").asInt()).isEqualTo(16);
        assertThat(answer.get("destructive_allowed").asBoolean()).isFalse();
        assertThat(answer.get("open_at_most").asInt()).isEqualTo(80);
        // Nearly 1 − 0.95^16 = 0.56, by drawing 5 % without putting back.
        assertThat(answer.get("chance_with_those").asDouble()).isEqualTo(0.56, within(0.01));
        assertThat(answer.get("basis")).hasSize(2);
    }

    /** Practice rules: none of a small stock, at most a twentieth of a large one. */
    @Test
    void fewAreNeverOpened() {
        assertThat(json("sample --population 199 --prevalence 50% --json")
                        .get("destructive_allowed")
                        .asBoolean())
                .isFalse();
        assertThat(json("sample --population 199 --prevalence 50% --json")
                        .get("open_at_most")
                        .asInt())
                .isZero();
        JsonNode large = json("sample --population 2000 --prevalence 5 --json");
        assertThat(large.get("n").asInt()).isLessThanOrEqualTo(100);
        assertThat(large.get("destructive_allowed").asBoolean()).isTrue();
        assertThat(large.get("non_destructive_checks")).hasSize(4);
        String text = text("sample --population 80 --prevalence 5%");
        assertThat(text)
                .contains(
                        "Do not open any: opening kills the bee",
                        "(candling)",
                        "rinse water",
                        "failed cells",
                        "debris");
    }

    @Test
    void fewNestsAreAllLookedAt() {
        JsonNode few = json("sample --of nests --population 24 --prevalence 50% --json");
        assertThat(few.get("n").asInt()).isEqualTo(24);
        assertThat(few.get("look_at_all").asBoolean()).isTrue();
        JsonNode many = json("sample --of nests --population 300 --prevalence 10% --json");
        assertThat(many.get("n").asInt()).isEqualTo(28);
        assertThat(many.get("look_at_all").asBoolean()).isFalse();
        assertThat(text("sample --of nests --population 24 --prevalence 50%")).startsWith("Look at all 24 nests");
    }

    /** Cochran (1977): 385 of very many and 80 of 100, for a half to within 5 points. */
    @Test
    void aShareToWithinAMargin() {
        assertThat(json("sample --margin 5% --json").get("n").asInt()).isEqualTo(385);
        assertThat(json("sample --margin 5% --population 100 --json").get("n").asInt())
                .isEqualTo(80);
        assertThat(json("sample --margin 5% --json").get("population").isNull()).isTrue();
    }

    /**
     * Where ill ones can be missed: 80 in all, 2 of them ill, told with 0.8 → 78 (printed in the manual of a package for animal
     * health surveys); one ill one cannot be told with 95 % confidence, looking at all gives 80 %.
     */
    @Test
    void illOnesMayBeMissed() {
        JsonNode answer = json("sample --population 80 --prevalence 2.5% --sensitivity 80 --json");
        assertThat(answer.get("n").asInt()).isEqualTo(78);
        assertThat(answer.get("sensitivity").asDouble()).isEqualTo(0.8);
        assertThat(answer.get("reached").asBoolean()).isTrue();
        assertThat(answer.get("n_exact").asInt()).isLessThanOrEqualTo(78);
        assertThat(answer.get("chance_with_n_exact").asDouble()).isGreaterThanOrEqualTo(0.95);
        // ln 0.05 / ln(1 − 0.05 × 0.8) = 73.4
        assertThat(json("sample --prevalence 5% --sensitivity 80% --json")
                        .get("n")
                        .asInt())
                .isEqualTo(74);
        Run one = Run.of("sample", "--population", "80", "--prevalence", "1.25", "--sensitivity", "80");
        assertThat(one.exit()).isEqualTo(4);
        assertThat(one.out().replaceAll("\\s+", " "))
                .startsWith("Even looking at all 80 cocoons shows an ill one with only 80 % chance");
        assertThat(text("sample --of nests --population 300 --prevalence 10% --sensitivity 70%"))
                .contains("70 % of the ill ones you look at are told to be ill");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            sample --population 100 | it is not clear what the sample is for; expected --prevalence P
            sample --population 0 --prevalence 5 | --population is "0"; expected a whole number from 1 to 10,000,000.
            sample --population 100 --prevalence 0 | --prevalence is "0"; expected a share above 0 and below 100 %
            sample --population 100 --prevalence 5 --confidence 100 | --confidence is "100"; expected a share
            sample --population 100 --margin 120% | --margin is "120%"; expected a share
            sample --population 100 --of combs --prevalence 5 | --of is "combs"; expected one of cocoons, nests, containers.
            sample --population 100 --margin 5 --sensitivity 80 | --sensitivity is given; expected it with --prevalence only
            sample --population 100 --prevalence 5 --sensitivity 0 | --sensitivity is "0"; expected a share
            sample --of containers --population 8 --prevalence 5 | samples by container follow a fixed plan; expected --population
            """)
    void wrongQuestionsAreNamed(String arguments, String sentence) {
        Run run = Run.of(arguments.split(" ", -1));
        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).startsWith("nestyear: " + sentence).contains(" [NY-USAGE]");
    }

    private static String text(String arguments) {
        Run run = Run.of(arguments.split(" ", -1));
        assertThat(run.exit()).as(run.err()).isZero();
        assertThat(run.out().lines()).allMatch(line -> line.length() <= 80);
        return run.out().replaceAll("\\s+", " ");
    }

    private static JsonNode json(String arguments) {
        Run run = Run.of(arguments.split(" ", -1));
        assertThat(run.exit()).as(run.err()).isZero();
        JsonSchemas.assertValid("sample.schema.json", run.out());
        return JsonMapper.shared().readTree(run.out());
    }
}
