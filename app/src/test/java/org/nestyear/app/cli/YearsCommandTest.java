package org.nestyear.app.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.nestyear.app.JsonSchemas;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class YearsCommandTest {
    private static final String FOUR = """
            year,females_out,daughters,bought,given,joined
            2022,50,30,0,5,2
            2021,40,55,40,0,0
            2023,30,,0,0,0
            2024,60,81,4,6,3
            """;

    @TempDir
    Path folder;

    /** By hand: settling 0.93 × 0.45; 2023's daughters are 60 put out next, less 4 bought, plus 6 given. */
    @Test
    void ownYearsAreReadWithoutWhatWasBoughtOrGiven() throws IOException {
        JsonNode answer = json(write(FOUR), "--target", "100", "--by", "2028");
        JsonNode own = answer.get("own_years");
        assertThat(own.size()).isEqualTo(4);
        assertThat(own.get(0).get("growth").asDouble()).isEqualTo(55 / 40.0, within(1e-8));
        assertThat(own.get(1).get("growth").asDouble()).isEqualTo(30 / (50 + 2 / 0.4185), within(1e-8));
        assertThat(own.get(2).get("growth").asDouble()).isEqualTo(62 / 30.0, within(1e-8));
        assertThat(own.get(2).get("from").asString()).isEqualTo("females_out");
        assertThat(own.get(3).get("growth").asDouble()).isEqualTo(81 / (60 + 3 / 0.4185), within(1e-8));
        assertThat(answer.get("own_weight").asDouble()).isEqualTo(4 / 5.44, within(1e-8));
        assertThat(answer.get("first_females").asInt()).isEqualTo(81);
        JsonNode years = answer.get("years");
        assertThat(years.size()).isEqualTo(4);
        assertThat(years.get(0).get("p10").asDouble()).isEqualTo(81);
        assertThat(years.get(3).get("year").asInt()).isEqualTo(2028);
        for (JsonNode year : years) {
            assertThat(year.get("p10").asDouble())
                    .isLessThanOrEqualTo(year.get("p50").asDouble());
            assertThat(year.get("p50").asDouble())
                    .isLessThanOrEqualTo(year.get("p90").asDouble());
            assertThat(year.get("tunnels").asInt())
                    .isLessThanOrEqualTo(answer.get("tunnels_needed").asInt());
        }
        assertThat(answer.get("cost").isNull()).isTrue();
        String text =
                Run.of("years", folder.resolve("years.csv").toString()).out().replaceAll("\\s+", " ");
        assertThat(text).contains("in the spring of 2029", "Your own years: 2021 × 1.38", "They count for 74 %");
    }

    @Test
    void tunnelsAreThoseOfTheCommandTunnels() throws IOException {
        JsonNode years = json(write(FOUR), "--species", "Osmia cornuta");
        Run tunnels = Run.of("tunnels", "--species", "Osmia cornuta", "--females", "81", "--json");
        assertThat(years.get("years").get(0).get("tunnels").asInt())
                .isEqualTo(JsonMapper.shared()
                        .readTree(tunnels.out())
                        .get("tunnels_needed")
                        .asInt());
    }

    @Test
    void underThreeYearsOnlyThePublishedGrowthIsUsed() throws IOException {
        Path file = write("year;females_out;cells\n2024;20;90\n");
        JsonNode answer = json(file, "--tunnel-price", "0.5", "--female-price", "1");
        assertThat(answer.get("own_weight").asDouble()).isZero();
        assertThat(answer.get("growth").asDouble()).isEqualTo(1.28, within(1e-8));
        // 90 cells × 0.74 that live × 1/2.5 that are daughters
        assertThat(answer.get("first_females").asInt()).isEqualTo(27);
        double females = answer.get("females_missing").asDouble();
        int tunnels = answer.get("tunnels_needed").asInt();
        assertThat(answer.get("cost").asDouble()).isEqualTo(females + 0.5 * tunnels, within(1e-6));
        assertThat(Run.of("years", file.toString()).out().replaceAll("\\s+", " "))
                .contains("with fewer than three only the published growth is used");
    }

    @Test
    void whatIsSparedIsWhatTheTargetAllows() throws IOException {
        Path file = write(FOUR);
        JsonNode modest = json(file, "--target", "10", "--by", "2026");
        assertThat(modest.get("can_spare").asInt()).isPositive();
        assertThat(modest.get("reach_probability").asDouble()).isGreaterThan(0.8);
        JsonNode bold = json(file, "--target", "500", "--by", "2026");
        assertThat(bold.get("can_spare").asInt()).isZero();
        assertThat(bold.get("females_missing").asDouble()).isPositive();
        assertThat(bold.get("fingerprint")).isNotEqualTo(modest.get("fingerprint"));
        assertThat(json(file, "--target", "500", "--tunnels", "5")
                        .get("females_missing")
                        .isNull())
                .isTrue();
    }

    /** A year without any daughter is a bad year and not the end. */
    @Test
    void oneShortfallLeavesAChance() throws IOException {
        JsonNode answer = json(write("year,females_out,daughters,bought\n2021,20,30,0\n2022,30,0,0\n2023,25,40,25\n"));
        assertThat(answer.get("own_years").get(1).get("growth").asDouble()).isEqualTo(0.5 / 30, within(1e-8));
        assertThat(answer.get("reach_probability").asDouble()).isPositive();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            year,females_out;2024,x            | 2 | :2:6: "x" stands in the table of years; expected a whole number from 0 to 10,000,000. [NY-YEARS-NUMBER]
            year,females_out;2024,2.5          | 2 | :2:6: "2.5" stands in the table of years; expected a whole number
            year,females_out;24,3              | 2 | :2:1: "24" stands in the table of years; expected a year such as 2015. [NY-YEARS-NUMBER]
            year,females_out;2024,             | 2 | :2:6: the females put out in 2024 are missing; expected a whole number. [NY-YEARS-NUMBER]
            year,females_out;2024,3;2024,4     | 2 | :3:1: the year 2024 stands there twice; expected a line a year. [NY-YEARS-TWICE]
            year,females_out,bought;2024,3,4   | 2 | :2:8: more females were bought than put out in 2024; expected
            year,females_out,daughters,cocoons;2024,3,9,4 | 2 | :2:8: there are more daughters than cocoons in 2024; expected cocoons of both sexes. [NY-YEARS-NUMBER]
            year,females;2024,3                | 2 | :1:1: the table has the columns year, females; expected the columns "year" and "females_out". [NY-YEARS-COLUMN]
            year,females_out                   | 2 | :1:1: the table holds no year; expected
            year,females_out;2024,"3           | 2 | :2:1: a quotation mark is opened and not closed again
            year,females_out,daughters;2024,3,0 | 3 | : no female is left for the spring of 2025, none is to be bought and none joins. [NY-YEARS-NOTHING]
            """)
    void wrongTablesAreNamedByLine(String lines, int exit, String sentence) throws IOException {
        Path file = write(lines.replace(';', '\n') + "\n");
        Run run = Run.of("years", file.toString());
        assertThat(run.exit()).as(run.err()).isEqualTo(exit);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).startsWith(file + sentence);
        assertThat(run.err().lines().count()).isLessThanOrEqualTo(2);
    }

    @Test
    void wrongArgumentsAreNamed() throws IOException {
        String file = write(FOUR).toString();
        assertThat(Run.of("years", file, "--by", "2024").err())
                .startsWith("nestyear: --by is 2024; expected a spring from 2026 to 2054.");
        assertThat(Run.of("years", file, "--target", "0").exit()).isEqualTo(2);
        assertThat(Run.of("years", file, "--tunnel-price", "-1").exit()).isEqualTo(2);
        assertThat(Run.of("years", file, "--species", "Osmia lignarai").err()).contains("Osmia lignaria");
        assertThat(Run.of("years", "no-such.csv").err()).contains("[NY-FILE-MISSING]");
    }

    private Path write(String text) throws IOException {
        return Files.writeString(folder.resolve("years.csv"), text);
    }

    private static JsonNode json(Path file, String... more) {
        String[] words = new String[more.length + 3];
        words[0] = "years";
        words[1] = file.toString();
        words[2] = "--json";
        System.arraycopy(more, 0, words, 3, more.length);
        Run run = Run.of(words);
        assertThat(run.exit()).as(run.err()).isZero();
        JsonSchemas.assertValid("years.schema.json", run.out());
        return JsonMapper.shared().readTree(run.out());
    }
}
