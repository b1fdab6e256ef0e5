package org.nestyear.app.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.nestyear.app.JsonSchemas;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The commands {@code degree-days} and {@code chill}; the sums themselves are checked where the reference data is read. */
class WarmthCommandsTest {
    @TempDir
    Path folder;

    private static JsonNode json(String schema, Run run) {
        assertThat(run.exit()).as(run.err()).isZero();
        JsonSchemas.assertValid(schema + ".schema.json", run.out());
        return JsonMapper.shared().readTree(run.out());
    }

    /** Ten invented days of 2 to 12 °C; the fifth is missing. */
    private String table() throws IOException {
        List<String> lines = new ArrayList<>(List.of("date,tmin_c,tmax_c,rain_mm"));
        for (int day = 1; day <= 10; day++) {
            if (day != 5) {
                lines.add("2015-03-" + (day < 10 ? "0" : "") + day + ",2,12,0");
            }
        }
        return Files.write(folder.resolve("weather.csv"), lines).toString();
    }

    @Test
    void oneDayAllAboveTheBaseIsItsMeanAboveTheBase() {
        JsonNode answer =
                json("degree-days", Run.of("degree-days", "--min", "10", "--max", "20", "--base", "5", "--json"));
        assertThat(answer.get("degree_days").asDouble()).isEqualTo(10);
        assertThat(answer.get("days").asInt()).isEqualTo(1);
    }

    @Test
    void fahrenheitIsReadAndSaidInFahrenheit() {
        Run run = Run.of("degree-days", "--min", "50F", "--max", "68F", "--base", "41F", "--units", "us");
        assertThat(run.out()).startsWith("18.0 °F-days above 41.0 °F.");
    }

    @Test
    void aTableIsSummedAndWhatWasFilledIsSaid() throws IOException {
        String table = table();
        String[] over = {"--weather", table, "--from", "2015-03-02", "--to", "2015-03-09"};
        JsonNode sum = json(
                "degree-days",
                Run.of("degree-days", "--base", "0", over[0], over[1], over[2], over[3], over[4], over[5], "--json"));
        assertThat(sum.get("degree_days").asDouble()).isCloseTo(8 * 7, within(1e-9));
        assertThat(sum.get("filled_days").asInt()).isEqualTo(1);
        Run words = Run.of("degree-days", "--base", "0", over[0], over[1], over[2], over[3], over[4], over[5]);
        assertThat(words.out()).contains("1 of the 8 days were missing");

        Run chill = Run.of("chill", "--lat", "45", over[0], over[1], over[2], over[3], over[4], over[5], "--json");
        JsonNode cold = json("chill", chill);
        assertThat(cold.get("chilling_hours").asDouble()).isBetween(8.0 * 8, 8.0 * 16);
        assertThat(cold.get("growing_degree_hours").asDouble()).isPositive();
        assertThat(cold.get("basis").size()).isGreaterThan(10);
        Run text = Run.of("chill", "--lat", "45", over[0], over[1], over[2], over[3], over[4], over[5]);
        assertThat(text.out()).contains("8 days:", "chill portions", "not bees");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            degree-days --min 10 --max 20 | --base
            degree-days --min 20 --max 10 --base 5 | --max is 10, below --min 20
            degree-days --min 10 --base 5 | either --min and --max of one day, or --weather FILE
            degree-days --min 10 --max 20 --base 5 --cap 5 | --cap is 5, not above --base 5
            degree-days --min ten --max 20 --base 5 | --min is "ten"
            chill --lat 45 | --weather FILE, --from DATE and --to DATE
            chill --lat 95 --weather w.csv --from 2015-03-01 --to 2015-03-02 | --lat is 95
            chill --lat 45 --weather w.csv --from 2015-03-02 --to 2015-03-01 | --to is 2015-03-01, before --from 2015-03-02
            """)
    void aWrongQuestionGetsOneSentence(String arguments, String part) {
        Run run = Run.of(arguments.split(" "));
        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains(part);
    }

    @Test
    void daysOutsideTheTableAreRefused() throws IOException {
        Run run = Run.of("chill", "--lat", "45", "--weather", table(), "--from", "2015-02-27", "--to", "2015-03-04");
        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.err()).contains("NY-WEATHER-SPAN", "from 2015-03-01 to 2015-03-10", "2015-02-27 to 2015-03-04");
    }
}
