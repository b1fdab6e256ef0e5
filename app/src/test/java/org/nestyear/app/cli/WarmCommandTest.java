package org.nestyear.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.nestyear.app.JsonSchemas;
import org.nestyear.core.source.Parameter;
import org.nestyear.data.CatalogueFiles;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class WarmCommandTest {
    private static final String WEATHER =
            Path.of("src/main/resources/demo/tansy-lane-weather.csv").toString();

    @TempDir
    Path folder = Path.of("");

    /** CIS 538, part 3: warmed from day 1 at 29.4 °C, days 18, 20, 22 and 28; case M01, a day either way. */
    @ParameterizedTest
    @CsvSource({"29.4", "29.4C", "85F"})
    void theCalendarHolds(String at) {
        JsonNode answer = json("--at-c", at, "--start", "2026-06-01");
        assertBand(answer, "first_male", "2026-06-17", "2026-06-19");
        assertBand(answer, "first_female", "2026-06-19", "2026-06-21");
        assertBand(answer, "half_females", "2026-06-21", "2026-06-23");
        assertBand(answer, "most_out", "2026-06-27", "2026-06-29");
        // Day 10 to two days before the first males; case M03.
        assertThat(answer.at("/parasitoid_watch/from").asString()).isEqualTo("2026-06-09");
        assertThat(answer.at("/parasitoid_watch/to").asString()).isEqualTo("2026-06-17");
        assertThat(answer.at("/stages/1/stage").asString()).isEqualTo("white_pupa");
        assertThat(answer.at("/stages/1/may_be_held").asBoolean()).isFalse();
    }

    /** Trade rule (common practice, no source): at about 80 °F they are out in about 28 days. */
    @Test
    void theRuleOfTheTradeLiesInTheBand() {
        JsonNode answer = json("--at-c", "26.7", "--start", "2026-06-01");
        assertThat(LocalDate.parse("2026-06-01").plusDays(28))
                .isBetween(date(answer, "half_females", "early"), date(answer, "half_females", "late"));
    }

    /** The day to begin, warmed from, gives the day asked for. */
    @ParameterizedTest
    @CsvSource({"29.4", "22", "33"})
    void backwardAndForwardAgree(String at) {
        JsonNode back = json("--at-c", at, "--ready-by", "2026-06-22");
        JsonNode forward = json("--at-c", at, "--start", back.get("start").asString());
        JsonNode latest = json("--at-c", at, "--start", back.get("start_latest").asString());
        assertThat(date(forward, "half_females", "late")).isEqualTo(LocalDate.parse("2026-06-22"));
        assertThat(date(latest, "half_females", "early")).isEqualTo(LocalDate.parse("2026-06-22"));
        assertThat(back.get("half_females")).isEqualTo(forward.get("half_females"));
    }

    /** Days warmed at the same temperature count in full, and a seller's days to flight are days to the first males. */
    @Test
    void boughtAlreadyWarmed() {
        JsonNode warmed = json("--at-c", "29.4", "--start", "2026-06-01", "--days-warmed", "10");
        JsonNode stated = json("--at-c", "29.4", "--start", "2026-06-01", "--days-to-flight", "7");
        assertBand(warmed, "first_male", "2026-06-07", "2026-06-09");
        assertThat(stated.get("first_male")).isEqualTo(warmed.get("first_male"));
        // Parasitoids came out from day 10 on, so the watch begins at once.
        assertThat(warmed.at("/parasitoid_watch/from").asString()).isEqualTo("2026-06-01");
        assertThat(text("--at-c", "29.4", "--start", "2026-06-01", "--days-warmed", "10"))
                .contains("after 10 days of warmth before");
    }

    /** A log at one temperature gives what that temperature gives. */
    @Test
    void aSteadyLogIsSteadyWarming() throws IOException {
        JsonNode answer = json("--log", log("2026-06-01T00:00", 24 * 30, 29.4).toString());
        assertBand(answer, "half_females", "2026-06-21", "2026-06-23");
        assertThat(answer.at("/log/stage_most").asString()).isEqualTo("emerging");
        assertThat(answer.at("/log/mean_c").asDouble()).isEqualTo(29.4);
        assertThat(answer.get("too_hot_hours").asDouble()).isZero();
    }

    @Test
    void afterTheLogItsLastDayGoesOn() throws IOException {
        String file = log("2026-06-01T00:00", 24 * 10, 29.4).toString();
        JsonNode answer = json("--log", file);
        assertBand(answer, "half_females", "2026-06-21", "2026-06-23");
        assertThat(answer.at("/log/then_c").asDouble()).isEqualTo(29.4);
        assertThat(answer.at("/log/stage_least").asString()).isEqualTo("white_pupa");
        JsonNode cooler = json("--log", file, "--at-c", "24");
        assertThat(date(cooler, "half_females", "early")).isAfter(date(answer, "half_females", "early"));
    }

    /** A log that ends cold gives the dates it holds and no others. */
    @Test
    void aLogThatEndsColdGivesAPart() throws IOException {
        Run run = run("--log", log("2026-06-01T00:00", 24 * 10, 15).toString(), "--json");

        assertThat(run.exit()).isEqualTo(4);
        JsonSchemas.assertValid("warm.schema.json", run.out());
        JsonNode answer = JsonMapper.shared().readTree(run.out());
        assertThat(answer.at("/first_male/early").isNull()).isTrue();
        assertThat(answer.at("/log/then_c").isNull()).isTrue();
        assertThat(answer.at("/log/cool_hours").asInt()).isEqualTo(240);
        assertThat(text("--log", folder.resolve("log.csv").toString())).contains("--at-c tells how warm they are kept");
    }

    @Test
    void aDayWithoutReadingsIsNotGuessed() throws IOException {
        Path file = folder.resolve("gap.csv");
        Files.writeString(file, "time,temp_c\n2026-06-01 00:00,29\n2026-06-01 01:00,29\n2026-06-03 00:00,29\n");
        Run run = run("--log", file.toString());

        assertThat(run.exit()).isEqualTo(3);
        assertThat(run.err()).contains("no reading for 47 hours").contains("[NY-LOG-GAP]");
    }

    /** Put out in May at 40.8° N in the demo's city, they come out in June and July in every year. */
    @Test
    void outdoorsTheYearsMakeTheBand() {
        JsonNode ahead = json("--weather", WEATHER, "--lat", "40.78", "--out", "2016-05-15");
        assertThat(ahead.at("/summers/count").asInt()).isEqualTo(4);
        assertThat(ahead.at("/summers/own_days").asInt()).isZero();
        assertThat(ahead.at("/summers/last_useful").asString()).isEqualTo("2016-07-31");
        assertThat(ahead.at("/summers/in_time").asInt()).isEqualTo(4);
        assertThat(date(ahead, "half_females", "early")).isAfter(LocalDate.parse("2016-06-01"));
        assertThat(date(ahead, "half_females", "late")).isBefore(LocalDate.parse("2016-07-31"));
        JsonNode past = json("--weather", WEATHER, "--lat", "40.78", "--out", "2014-05-15");
        assertThat(past.at("/summers/count").asInt()).isEqualTo(1);
        assertThat(text("--weather", WEATHER, "--lat", "40.78", "--out", "2016-05-15"))
                .contains("in eight summers of ten")
                .contains("in 4 of 4 summers");
    }

    /** The same weather half a year later, south of the equator, gives the same dates half a year later. */
    @Test
    void southOfTheEquatorTheYearIsTurned() throws IOException {
        List<String> rows = new ArrayList<>();
        for (String row : Files.readAllLines(Path.of(WEATHER))) {
            int comma = row.indexOf(',');
            rows.add(
                    row.startsWith("date")
                            ? row
                            : LocalDate.parse(row.substring(0, comma)).plusDays(184) + row.substring(comma));
        }
        Path south = folder.resolve("south.csv");
        Files.write(south, rows);

        JsonNode north = json("--weather", WEATHER, "--lat", "40.78", "--out", "2014-05-15");
        JsonNode turned = json("--weather", south.toString(), "--lat", "-40.78", "--out", "2014-11-15");
        assertThat(turned.at("/summers/last_useful").asString()).isEqualTo("2015-02-01");
        for (String milestone : List.of("first_male", "first_female", "half_females", "most_out")) {
            for (String bound : List.of("early", "late")) {
                LocalDate half = date(north, milestone, bound).plusDays(184);
                assertThat(date(turned, milestone, bound)).isBetween(half.minusDays(2), half.plusDays(2));
            }
        }
    }

    /** Days of the summer asked for are used before those of past years: what lies in them is the same in every run. */
    @Test
    void daysOfTheSummerItselfComeFirst() throws IOException {
        List<String> rows = Files.readAllLines(Path.of(WEATHER)).stream()
                .filter(row -> row.compareTo("2015-07-11") < 0 || row.startsWith("date"))
                .toList();
        Path part = folder.resolve("part.csv");
        Files.write(part, rows);

        JsonNode known = json("--weather", part.toString(), "--lat", "40.78", "--out", "2015-05-15");
        JsonNode whole = json("--weather", WEATHER, "--lat", "40.78", "--out", "2015-05-15");

        assertThat(known.at("/summers/count").asInt()).isEqualTo(3);
        assertThat(known.at("/summers/own_days").asInt()).isEqualTo(57);
        assertThat(date(known, "first_male", "late")).isBefore(LocalDate.parse("2015-07-08"));
        assertThat(known.get("first_male")).isEqualTo(whole.get("first_male"));
        assertThat(date(known, "most_out", "late")).isAfter(LocalDate.parse("2015-07-11"));
        assertThat(known.get("most_out")).isNotEqualTo(whole.get("most_out"));
    }

    /** A single hot reading counts though the mean of its hour is cooler. */
    @Test
    void hotReadingsAreTold() throws IOException {
        Path file = log("2026-06-01T00:00", 100, 29.4);
        Files.writeString(file, Files.readString(file).replace("2026-06-02T10:00,29.4", "2026-06-02T10:00,38"));
        JsonNode answer = json("--log", file.toString());

        assertThat(answer.get("too_hot_hours").asDouble()).isEqualTo(1);
        assertThat(answer.at("/cautions/0/id").asString()).isEqualTo("heat");
    }

    @Test
    void boughtTooFarOnTheyMayBeOut() {
        JsonNode answer = json("--at-c", "29.4", "--start", "2026-06-01", "--days-warmed", "25");

        assertThat(answer.get("cautions")
                        .valueStream()
                        .map(caution -> caution.get("id").asString()))
                .contains("already-out");
        assertThat(json("--at-c", "29.4", "--start", "2026-06-01")
                        .get("cautions")
                        .valueStream()
                        .map(caution -> caution.get("id").asString()))
                .doesNotContain("already-out");
    }

    /** The clock of the tests stands in March 2015. */
    @Test
    void aDayThatIsPastIsSaid() {
        assertThat(text("--at-c", "29.4", "--ready-by", "2015-03-20")).contains("That is past. --start 2015-03-10");
        assertThat(text("--at-c", "29.4", "--ready-by", "2015-06-20")).doesNotContain("That is past");
    }

    @Test
    void putOutTooLateTheyMissTheSummer() {
        Run run = run("--weather", WEATHER, "--lat", "40.78", "--out", "2016-07-20", "--json");

        assertThat(run.exit()).isEqualTo(3);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains("Not this summer").contains("--ready-by").contains("[NY-WARM-NOT-THIS-SUMMER]");
    }

    /** Cases M16 and M17: 12 and 18 °C for 14 days cost nothing, constant cold is safe for a week at most. */
    @ParameterizedTest
    @CsvSource({
        "2026-06-16, 14, 18, 0, safe",
        "2026-06-16, 14, 12, 0, safe",
        "2026-06-16, 15, 18, 0, too_long",
        "2026-06-16, 7, 6, 0, costs",
        "2026-06-16, 8, 6, 0, too_long",
        "2026-06-16, 42, 6, 1, safe",
        "2026-06-16, 56, 6, 3, safe",
        "2026-06-16, 56, 6, 1, too_long",
        "2026-06-16, 3, 4, 0, untested",
        "2026-06-16, 3, 22, 0, not_a_hold",
        "2026-06-10, 3, 18, 0, untested",
        "2026-06-03, 3, 18, 0, untested",
        "2026-06-25, 3, 18, 0, too_late"
    })
    void aHoldIsJudgedByItsStage(String from, String days, String celsius, String pulse, String verdict) {
        JsonNode answer = json(
                "--at-c",
                "29.4",
                "--start",
                "2026-06-01",
                "--hold-from",
                from,
                "--hold-days",
                days,
                "--hold-c",
                celsius,
                "--hold-pulse-hours",
                pulse);

        assertThat(answer.at("/hold/verdict").asString()).isEqualTo(verdict);
    }

    @Test
    void aHoldPutsOffEmergence() {
        JsonNode answer = json(
                "--at-c",
                "29.4",
                "--start",
                "2026-06-01",
                "--hold-from",
                "2026-06-15",
                "--hold-days",
                "10",
                "--hold-c",
                "12");

        assertBand(answer, "half_females", "2026-07-01", "2026-07-03");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            --at-c 19.9 --start 2026-06-01 | --at-c is 19.9 °C; steady warming is answered from 20 to 34 °C (68 to 93 °F), because colder bees come out late, few, or not at all. [NY-WARM-RANGE]
            --at-c 34.1 --start 2026-06-01 | --at-c is 34.1 °C; steady warming is answered from 20 to 34 °C (68 to 93 °F), because in greater heat the count goes wrong and few come out. [NY-WARM-RANGE]
            --at-c 29 --ready-by 2026-06-01 --days-warmed 3 --warmed-at-c 10 | --warmed-at-c is 10.0 °C
            """)
    void steadyWarmingHasItsLimits(String arguments, String message) {
        Run run = run(arguments.split(" ", -1));

        assertThat(run.exit()).isEqualTo(3);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains(message).contains("Maybe keep them at 29.4 °C");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            --at-c 29.4 | it is not clear how the cells are warmed | Maybe --start is missing
            --at-c 85 --start 2026-06-01 | --at-c is 85; expected a temperature from -10 to 50 °C | Maybe this is Fahrenheit: write 85F.
            --at-c 29.4 --start 1.6.2026 | --start is "1.6.2026"; expected a date such as |
            --weather w.csv --out 2026-05-01 | it is not clear how the cells are warmed | Maybe --lat is missing
            --weather no.csv --out 2026-05-01 --lat 40 | no.csv: there is no such file |
            --log no.csv | no.csv: there is no such file |
            --at-c 29 --start 2026-06-01 --ready-by 2026-06-20 | it is not clear how the cells are warmed |
            --at-c 29 --start 2026-06-01 --warmed-at-c 29 | it is not clear how long the cells were warmed before |
            --at-c 29 --start 2026-06-01 --hold-from 2026-06-10 | a hold is not told in full |
            --at-c 29 --start 2026-06-01 --hold-from 2026-05-10 --hold-days 3 --hold-c 18 | --hold-from is 2026-05-10; expected a day not before |
            --at-c 29 --start 2026-06-01 --days-warmed 400 | --days-warmed is 400; expected a number from 0 to 100 days |
            """)
    void wrongQuestionsAreRefused(String arguments, String message, String advice) {
        Run run = run(arguments.split(" ", -1));

        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains(message).contains(advice == null ? "" : advice);
    }

    @Test
    void masonBeesAreSentToTheirOwnCommand() {
        Run run = Run.of("warm", "--species", "Osmia lignaria", "--at-c", "29", "--start", "2026-06-01");

        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.err())
                .contains("expected one of Megachile rotundata")
                .contains("Maybe the command emerge was meant");
    }

    /** Every row of the shipped table is read on the way to some answer. */
    @Test
    void everyRowIsRead() throws IOException {
        Set<String> read = new TreeSet<>();
        for (JsonNode answer : List.of(
                json("--at-c", "29.4", "--start", "2026-06-01", "--stored-days", "200"),
                json("--at-c", "29.4", "--ready-by", "2026-06-22", "--lat", "52"),
                json("--log", log("2026-06-01T00:00", 300, 36).toString(), "--at-c", "30"),
                json("--weather", WEATHER, "--lat", "40.78", "--out", "2016-05-15"))) {
            answer.get("basis").forEach(row -> read.add(row.get("id").asString()));
        }
        List<String> rows = CatalogueFiles.leafcutters().species().get(0).parameters().rows().stream()
                .map(Parameter::id)
                .toList();

        assertThat(rows).hasSizeGreaterThan(60);
        assertThat(read).containsExactlyInAnyOrderElementsOf(rows);
    }

    @Test
    void theTextWarnsOfEveryHazard() {
        assertThat(text("--at-c", "30", "--start", "2026-06-01", "--stored-days", "150", "--units", "us"))
                .contains("wear a dust mask")
                .contains("Never rinse")
                .contains("tray of soapy water")
                .contains("over a border")
                .contains("closed nests warm themselves")
                .contains("86.0 °F")
                .doesNotContain("°C");
    }

    private Path log(String first, int hours, double celsius) throws IOException {
        List<String> rows = new ArrayList<>(List.of("time,temp_c"));
        for (int hour = 0; hour <= hours; hour++) {
            rows.add(LocalDateTime.parse(first).plusHours(hour) + "," + celsius);
        }
        Path file = folder.resolve("log.csv");
        Files.write(file, rows);
        return file;
    }

    private static Run run(String... arguments) {
        String[] all = new String[3 + arguments.length];
        System.arraycopy(new String[] {"warm", "--species", "Megachile rotundata"}, 0, all, 0, 3);
        System.arraycopy(arguments, 0, all, 3, arguments.length);
        return Run.of(all);
    }

    private static JsonNode json(String... arguments) {
        List<String> all = new ArrayList<>(List.of(arguments));
        all.add("--json");
        Run run = run(all.toArray(String[]::new));
        assertThat(run.err()).isEmpty();
        assertThat(run.exit()).isZero();
        JsonSchemas.assertValid("warm.schema.json", run.out());
        return JsonMapper.shared().readTree(run.out());
    }

    private static String text(String... arguments) {
        return run(arguments).out().replaceAll("\\s+", " ");
    }

    private static LocalDate date(JsonNode answer, String milestone, String bound) {
        return LocalDate.parse(answer.get(milestone).get(bound).asString());
    }

    private static void assertBand(JsonNode answer, String milestone, String early, String late) {
        assertThat(date(answer, milestone, "early")).as(milestone).isEqualTo(LocalDate.parse(early));
        assertThat(date(answer, milestone, "late")).as(milestone).isEqualTo(LocalDate.parse(late));
    }
}
