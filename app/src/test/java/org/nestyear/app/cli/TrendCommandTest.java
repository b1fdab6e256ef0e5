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

class TrendCommandTest {
    /** Morris & Doak 2002, table 3.1: grizzly bears of Yellowstone 1959-1997. */
    private static final int[] GRIZZLY = {
        44, 47, 46, 44, 46, 45, 46, 40, 39, 39, 42, 39, 41, 40, 33, 36, 34, 39, 35, 34, 38, 36, 37, 41, 39, 51, 47, 57,
        48, 60, 65, 74, 69, 65, 57, 70, 81, 99, 99
    };

    @TempDir
    Path folder;

    /** Printed in that book (from memory): mu 0.02134, sigma² 0.01305; the rest by hand. */
    @Test
    void thePublishedTrendComesOut() throws IOException {
        StringBuilder table = new StringBuilder("count,remark,year\n");
        for (int i = GRIZZLY.length - 1; i >= 0; i--) {
            table.append(GRIZZLY[i]).append(",x,").append(1959 + i).append('\n');
        }
        Path file = write(table.toString());
        JsonNode answer = json("trend", file.toString(), "--target", "20", "--within", "50", "--json");
        assertThat(answer.get("mu").asDouble()).isEqualTo(0.02134, within(5e-6));
        assertThat(answer.get("sigma2").asDouble()).isEqualTo(0.01305, within(5e-6));
        assertThat(answer.get("mu_low").asDouble()).isEqualTo(-0.01621, within(5e-6));
        assertThat(answer.get("mu_high").asDouble()).isEqualTo(0.05889, within(5e-6));
        assertThat(answer.get("sigma2_low").asDouble()).isEqualTo(0.00867, within(6e-6));
        assertThat(answer.get("sigma2_high").asDouble()).isEqualTo(0.02184, within(6e-6));
        assertThat(answer.get("reach_probability").asDouble()).isEqualTo(0.001846, within(1e-6));
        assertThat(answer.get("reach_low").asDouble()).isLessThan(0.001846);
        assertThat(answer.get("reach_high").asDouble()).isGreaterThan(0.001846);
        String text = Run.of("trend", file.toString()).out().replaceAll("\\s+", " ");
        assertThat(text)
                .startsWith("From 1959 to 1997 (39 counts) the stock grew by 2.2 % a year;")
                .contains("It may as well not have changed.", "grows from 99 to 198 at least once within 10 years");
    }

    @Test
    void semicolonsAndMissingYearsAreRead() throws IOException {
        Path file = write("year;count\n2010;12,5\n2011;\n2012;NA\n2014;30\n2015;25\n");
        JsonNode answer = json("trend", file.toString(), "--json");
        assertThat(answer.get("counts").asInt()).isEqualTo(3);
        assertThat(answer.get("mu").asDouble()).isEqualTo(Math.log(2) / 5, within(1e-9));
        assertThat(answer.get("target").asDouble()).isEqualTo(50);
        assertThat(Run.of("trend", file.toString()).out().replaceAll("\\s+", " "))
                .contains("with 2 changes from year to year little is certain");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            year,count;2010,3;2011,x       | 2 | :3:6: "x" stands in the table of counts; expected a number of 0 or more. [NY-COUNTS-NUMBER]
            year,count;2010,3;11,4         | 2 | :3:1: "11" stands in the table of counts; expected a year such as 2015. [NY-COUNTS-NUMBER]
            year,count;2010,-3             | 2 | :2:6: "-3" stands in the table of counts; expected a number of 0 or more. [NY-COUNTS-NUMBER]
            year,count;2010,3;2010,4       | 2 | :3:1: there are two counts of 2010; expected one count a year. [NY-COUNTS-TWICE]
            year,bees;2010,3               | 2 | :1:1: the table has the columns year, bees; expected the columns "year" and "count". [NY-COUNTS-COLUMN]
            year,count                     | 2 | :1:1: the table holds no count; expected the columns "year" and "count" and then a line a year. [NY-FILE-EMPTY]
            year,count;2010,"3             | 2 | :2:1: a quotation mark is opened and not closed again
            year,count;2010,3;2011,4       | 3 | : the table holds 2 counts, and fewer than 3 show no trend. [NY-TREND-FEW]
            year,count;2010,3              | 3 | : the table holds 1 count, and fewer than 3 show no trend. [NY-TREND-FEW]
            year,count;2010,3;2011,0;2012,4 | 3 | : the count of 2011 is 0, and a stock that is gone has no growth. [NY-TREND-NOTHING]
            """)
    void wrongTablesAreNamedByLine(String lines, int exit, String sentence) throws IOException {
        Path file = write(lines.replace(';', '\n') + "\n");
        Run run = Run.of("trend", file.toString());
        assertThat(run.exit()).as(run.err()).isEqualTo(exit);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).startsWith(file + sentence);
        assertThat(run.err().lines().count()).isLessThanOrEqualTo(2);
    }

    @Test
    void wrongArgumentsAreNamed() throws IOException {
        assertThat(Run.of("trend", "no-such.csv").err()).contains("there is no such file", "[NY-FILE-MISSING]");
        Path file = write("year,count\n2010,3\n2011,4\n2012,5\n");
        assertThat(Run.of("trend", file.toString(), "--target", "0").err())
                .startsWith("nestyear: --target is 0; expected a number from 1 to");
        assertThat(Run.of("trend", file.toString(), "--within", "0.5").exit()).isEqualTo(2);
    }

    private Path write(String text) throws IOException {
        return Files.writeString(folder.resolve("counts.csv"), text);
    }

    private static JsonNode json(String... arguments) {
        Run run = Run.of(arguments);
        assertThat(run.exit()).as(run.err()).isZero();
        JsonSchemas.assertValid("trend.schema.json", run.out());
        return JsonMapper.shared().readTree(run.out());
    }
}
