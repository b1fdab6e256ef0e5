package org.nestyear.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.nestyear.app.JsonSchemas;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class EmergeCommandTest {
    private static final String WEATHER =
            Path.of("src/main/resources/demo/tansy-lane-weather.csv").toString();

    /**
     * Bosch and Kemp (2003), Environ. Entomol. 32:711: males of O. lignaria wintered 150 days at 0, 4 or 7 °C come out
     * within 5 days on average once at 20 °C.
     */
    @ParameterizedTest
    @ValueSource(strings = {"0", "4", "7"})
    void thePublishedWinteringCaseHolds(String chillC) {
        JsonNode answer = json(
                "emerge",
                "--species",
                "Osmia lignaria",
                "--chill-days",
                "150",
                "--chill-c",
                chillC,
                "--at-c",
                "20",
                "--json");

        assertThat(answer.get("male").get("mean_days").asDouble()).isPositive().isLessThanOrEqualTo(5);
        assertThat(answer.get("female").get("mean_days").asDouble())
                .isGreaterThan(answer.get("male").get("mean_days").asDouble());
        assertThat(answer.get("basis").size()).isGreaterThan(10);
    }

    @Test
    void quantilesAreInOrderAndTheTextSaysTheSame() {
        JsonNode female = json(
                        "emerge",
                        "--species",
                        "Osmia bicornis",
                        "--chill-days",
                        "120",
                        "--chill-c",
                        "4C",
                        "--at-c",
                        "68F",
                        "--json")
                .get("female");

        assertThat(female.get("p10_days").asDouble())
                .isLessThanOrEqualTo(female.get("p50_days").asDouble());
        assertThat(female.get("p50_days").asDouble())
                .isLessThanOrEqualTo(female.get("p90_days").asDouble());
        Run text = Run.of(
                "emerge", "--species", "Osmia bicornis", "--chill-days", "120", "--chill-c", "4", "--at-c", "20");
        assertThat(text.out().replaceAll("\\s+", " "))
                .contains("half after "
                        + org.nestyear.app.service.Wording.number(
                                female.get("p50_days").asDouble(), 1) + " days");
    }

    @Test
    void inTheWeatherDatesAreGiven() {
        JsonNode answer = json(
                "emerge",
                "--species",
                "Osmia lignaria",
                "--chill-days",
                "180",
                "--chill-c",
                "3",
                "--weather",
                WEATHER,
                "--out",
                "2014-04-10",
                "--lat",
                "40.78",
                "--json");

        LocalDate males = LocalDate.parse(answer.get("male").get("p50").asString());
        LocalDate females = LocalDate.parse(answer.get("female").get("p50").asString());
        assertThat(males).isBetween(LocalDate.parse("2014-04-10"), females);
        assertThat(females).isBefore(LocalDate.parse("2014-05-31"));
    }

    @Test
    void weatherThatEndsTooSoonGivesAPartAnswer() {
        Run run = Run.of(
                "emerge",
                "--species",
                "Osmia lignaria",
                "--chill-days",
                "120",
                "--chill-c",
                "3",
                "--weather",
                WEATHER,
                "--out",
                "2015-12-30",
                "--lat",
                "40.78",
                "--json");

        assertThat(run.exit()).isEqualTo(4);
        JsonSchemas.assertValid("emerge.schema.json", run.out());
        assertThat(JsonMapper.shared()
                        .readTree(run.out())
                        .get("female")
                        .get("p90")
                        .isNull())
                .isTrue();
    }

    @Test
    void belowTheGateThereIsNoAnswer() {
        Run run =
                Run.of("emerge", "--species", "Osmia lignaria", "--chill-days", "150", "--chill-c", "3", "--at-c", "8");

        assertThat(run.exit()).isEqualTo(3);
        assertThat(run.out()).isEmpty();
        assertThat(run.err())
                .isEqualTo(
                        "nestyear: At 8.0 °C no bee comes out: warmth counts only above 10.1 °C for males and 11.4 °C"
                                + " for females. [NY-EMERGE-TOO-COLD]\n");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            Osmia lignria  | --at-c 20 | "Osmia lignria" is not a species
            Osmia lignaria | --at-c warm | --at-c is "warm"; expected a temperature from -10 to 40 °C
            Osmia lignaria | --out 2015-04-01 | it is not clear what the cocoons meet after the fridge
            Osmia lignaria | --weather no.csv --out 2015-04-01 --lat 40 | no.csv: there is no such file
            Osmia lignaria | --weather src/main/resources/demo/tansy-lane-weather.csv --out 2016-04-01 --lat 40 | the weather runs from 2012-01-01 to 2015-12-31
            """)
    void wrongQuestionsAreRefused(String species, String rest, String message) {
        String[] more = rest.split(" ", -1);
        String[] arguments = new String[7 + more.length];
        String[] start = {"emerge", "--species", species, "--chill-days", "150", "--chill-c", "3"};
        System.arraycopy(start, 0, arguments, 0, start.length);
        System.arraycopy(more, 0, arguments, start.length, more.length);

        Run run = Run.of(arguments);

        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains(message);
    }

    private static JsonNode json(String... arguments) {
        Run run = Run.of(arguments);
        assertThat(run.err()).isEmpty();
        assertThat(run.exit()).isZero();
        JsonSchemas.assertValid("emerge.schema.json", run.out());
        return JsonMapper.shared().readTree(run.out());
    }
}
