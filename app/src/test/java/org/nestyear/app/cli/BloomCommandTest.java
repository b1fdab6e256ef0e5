package org.nestyear.app.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.nestyear.app.JsonSchemas;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Weather and dates here are invented; how well the models do on real ones is checked where the reference data is read. */
class BloomCommandTest {
    private static final double SUM = 200;
    private static final int FIRST = 2001;
    private static final int LAST = 2012;

    @TempDir
    Path folder;

    /** Springs of which each warms in its own way, never the same twice. */
    private static double meanC(LocalDate date) {
        double season = 11 - 12 * Math.cos(2 * Math.PI * (date.getDayOfYear() - 20) / 365);
        int year = date.getYear();
        return season + 2.5 * Math.sin(year * 2.1) + 2 * Math.sin(date.getDayOfYear() / (9.0 + year % 5) + year);
    }

    private Path weather(LocalDate last) throws IOException {
        List<String> lines = new ArrayList<>(List.of("date,tmin_c,tmax_c,rain_mm"));
        for (LocalDate date = LocalDate.of(FIRST - 1, 9, 1); !date.isAfter(last); date = date.plusDays(1)) {
            double mean = meanC(date);
            lines.add(date + "," + (mean - 4) + "," + (mean + 4) + ",0");
        }
        return Files.write(folder.resolve("weather.csv"), lines);
    }

    /** The day on which 200 degree-days above 3 °C since 10 February are reached. */
    private static LocalDate bloom(int year) {
        double sum = 0;
        LocalDate date = LocalDate.of(year, 2, 9);
        while (sum < SUM) {
            date = date.plusDays(1);
            sum += Math.max(0, meanC(date) - 3);
        }
        return date;
    }

    private Path observed(String header, String... rows) throws IOException {
        List<String> lines = new ArrayList<>(List.of(header));
        lines.addAll(List.of(rows));
        return Files.write(folder.resolve("bloom.csv"), lines);
    }

    private Path dates(int first, int last) throws IOException {
        List<String> rows = new ArrayList<>();
        for (int year = first; year <= last; year++) {
            rows.add(year + "," + bloom(year).getDayOfYear());
        }
        return observed("year,day_of_year", rows.toArray(String[]::new));
    }

    private Run run(Path weather, Path observed, String... more) {
        List<String> all = new ArrayList<>(
                List.of("bloom", "--weather", weather.toString(), "--lat", "45", "--observed", observed.toString()));
        all.addAll(List.of(more));
        return Run.of(all.toArray(String[]::new));
    }

    private static JsonNode json(Run run) {
        JsonSchemas.assertValid("bloom.schema.json", run.out());
        return JsonMapper.shared().readTree(run.out());
    }

    @Test
    void aPlantThatFollowsWarmthIsForecastInYearsWithoutADate() throws IOException {
        Run run = run(weather(LocalDate.of(LAST, 12, 31)), dates(FIRST, 2010), "--json");
        JsonNode answer = json(run);

        assertThat(run.exit()).isZero();
        assertThat(answer.get("model").asString()).isEqualTo("degree-days");
        assertThat(answer.get("dates_used").asInt()).isEqualTo(10);
        assertThat(answer.get("models").size()).isEqualTo(5);
        assertThat(answer.get("leave_one_out_rmse_days").asDouble())
                .isLessThan(answer.get("mean_date_rmse_days").asDouble())
                .isLessThan(1.5);
        assertThat(answer.get("predicted").size()).isEqualTo(2);
        for (JsonNode year : answer.get("predicted")) {
            LocalDate date = LocalDate.parse(year.get("date").asString());
            assertThat((double) date.getDayOfYear())
                    .isCloseTo(bloom(year.get("year").asInt()).getDayOfYear(), within(2.0));
            assertThat(date)
                    .isBetween(
                            LocalDate.parse(year.get("early").asString()),
                            LocalDate.parse(year.get("late").asString()));
        }
    }

    @Test
    void theTextSaysTheSame() throws IOException {
        Run run = run(weather(LocalDate.of(LAST, 12, 31)), dates(FIRST, 2010), "--predict", "2011");

        assertThat(run.exit()).isZero();
        assertThat(run.out().replaceAll("\\s+", " "))
                .contains("Used: the warmth above")
                .contains("mean date was")
                .contains("2011: ")
                .doesNotContain("2012: ");
    }

    @Test
    void aSpringThatTheWeatherDoesNotReachGivesAPartAnswer() throws IOException {
        Run run = run(
                weather(LocalDate.of(LAST, 1, 31)), dates(FIRST, 2010), "--predict", "2011", "2012", "2030", "--json");
        JsonNode predicted = json(run).get("predicted");

        assertThat(run.exit()).isEqualTo(4);
        assertThat(predicted.size()).isEqualTo(3);
        assertThat(predicted.get(0).get("date").isNull()).isFalse();
        assertThat(predicted.get(1).get("date").isNull()).isTrue();
        assertThat(predicted.get(2).get("date").isNull()).isTrue();
    }

    @Test
    void twoDatesAreTooFew() throws IOException {
        Path table = observed("date,note", "2003-04-12,", "1950-04-01,long ago", "2004-04-20,", "2005,NA");
        Files.writeString(table, Files.readString(table).replace("2005,NA\n", "NA,frost took it\n"));
        JsonNode answer = json(run(weather(LocalDate.of(LAST, 12, 31)), table, "--json"));

        assertThat(answer.get("general").asBoolean()).isTrue();
        assertThat(answer.get("dates_used").asInt()).isEqualTo(2);
        assertThat(answer.get("dates_without_weather").asInt()).isEqualTo(1);
        assertThat(answer.get("leave_one_out_rmse_days").isNull()).isTrue();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            day;2003-04-12              | bloom.csv:1:1: the table has the columns day; expected a column "date" | NY-BLOOM-COLUMN
            note,date;a,12.4.2003       | bloom.csv:2:3: "12.4.2003" stands in the table of bloom dates; expected a date such as 2015-04-20 | NY-BLOOM-DATE
            year,day_of_year;2003,366   | bloom.csv:2:6: "366" stands in the table of bloom dates; expected a day of the year from 1 to 365. | NY-BLOOM-DATE
            year,day_of_year;03,100     | bloom.csv:2:1: "03" stands in the table of bloom dates; expected a year such as 2015. | NY-BLOOM-DATE
            date;2003-04-12;2003-04-20  | bloom.csv:3:1: there are two dates in 2003; expected one date a year | NY-BLOOM-TWICE
            date;"2003-04-12            | bloom.csv:2:1: a quotation mark is opened | NY-BLOOM-SYNTAX
            date;NA                     | bloom.csv:1:1: the table holds no bloom date | NY-FILE-EMPTY
            """)
    void aWrongTableIsNamedWithItsPlace(String rows, String message, String code) throws IOException {
        Path table = Files.writeString(folder.resolve("bloom.csv"), rows.replace(';', '\n') + "\n");
        Run run = run(weather(LocalDate.of(FIRST, 12, 31)), table);

        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains(message).contains("[" + code + "]");
    }

    @Test
    void aYearWithADateIsNotPredicted() throws IOException {
        Run run = run(weather(LocalDate.of(LAST, 12, 31)), dates(FIRST, 2010), "--predict", "2005");

        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.err()).contains("--predict names 2005");
        assertThat(run(folder.resolve("weather.csv"), folder.resolve("bloom.csv"), "--predict", "soon")
                        .err())
                .contains("--predict is \"soon\"; expected a year such as 2015.");
    }
}
