package org.nestyear.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.nestyear.app.JsonSchemas;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The command {@code facing} on the demo's invented site. */
class FacingCommandTest {
    private static final String PLACE =
            "facing --lat 40.78 --lon -73.97 --elevation-m 40 --zone America/New_York --faces 135 --for mason";

    @TempDir
    Path folder;

    private String season = "";

    @BeforeEach
    void writeTheDemo() {
        Path into = folder.resolve("my-season");
        assertThat(Run.of("demo", "--write", into.toString()).exit()).isZero();
        season = into.resolve("tansy-lane.toml").toString();
    }

    @Test
    void eightWaysAreRankedAndTheOwnIsMarked() {
        Run run = Run.of("facing", season, "--json");
        assertThat(run.exit()).as(run.err()).isZero();
        JsonSchemas.assertValid("facing.schema.json", run.out());
        JsonNode facings = JsonMapper.shared().readTree(run.out()).get("facings");
        assertThat(facings.size()).isEqualTo(8);
        int own = 0;
        for (JsonNode facing : facings) {
            own += facing.get("now").asBoolean() ? 1 : 0;
            JsonNode urgent = facing.get("urgent_days_a_year");
            assertThat(urgent.get("value").asDouble())
                    .isBetween(urgent.get("low").asDouble(), urgent.get("high").asDouble());
            assertThat(facing.get("watch_days_a_year").asDouble())
                    .isGreaterThanOrEqualTo(urgent.get("value").asDouble());
        }
        assertThat(own).isEqualTo(1);
        assertThat(Run.of("facing", season).out().replace('\n', ' '))
                .startsWith("For mason bees this house looks best to the ")
                .contains("as it looks now", "over the sighted skyline", "Guard: mesh of 20 mm to 25 mm");
    }

    /**
     * Extension advice and a field study: mason bees east to south-east, not south-west; leafcutters filled fronts to the
     * north faster and did worst to the south-west (Wilson et al. 2020).
     */
    @Test
    void waysSuitTheBees() {
        List<Double> mason = order("--for", "mason");
        assertThat(mason.get(0)).isIn(90.0, 135.0);
        assertThat(mason.indexOf(225.0)).isGreaterThan(mason.indexOf(135.0));
        List<Double> leafcutter = order("--for", "leafcutter");
        assertThat(leafcutter.get(0)).isIn(0.0, 45.0);
        assertThat(leafcutter.indexOf(225.0)).isGreaterThan(5);
    }

    private List<Double> order(String... options) {
        List<String> words = new ArrayList<>(List.of("facing", season, "--json"));
        words.addAll(List.of(options));
        Run run = Run.of(words.toArray(String[]::new));
        assertThat(run.exit()).as(run.err()).isZero();
        List<Double> order = new ArrayList<>();
        JsonMapper.shared()
                .readTree(run.out())
                .get("facings")
                .forEach(facing -> order.add(facing.get("faces_deg").asDouble()));
        return order;
    }

    /** No excess, no heat beyond the air's own; a roof takes heat away, and half a roof is refused. */
    @Test
    void excessAndRoofChangeTheHeat() throws IOException {
        double standing = hottest(season);
        assertThat(hottest(season, "--excess-c", "0")).isLessThan(standing);
        String text = Files.readString(Path.of(season));
        Path roofed = Files.writeString(
                Path.of(season).resolveSibling("roofed.toml"),
                text.replace("faces_deg = 135", "roof_out_cm = 30\nroof_above_cm = 15\nfaces_deg = 135"));
        assertThat(hottest(roofed.toString())).isLessThan(standing);
        Path half = Files.writeString(
                Path.of(season).resolveSibling("half.toml"),
                text.replace("faces_deg = 135", "roof_out_cm = 30\nfaces_deg = 135"));
        Run run = Run.of("facing", half.toString());
        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.err()).contains("roof_above_cm");
        assertThat(Run.of("facing", season, "--excess-c", "99").err()).contains("--excess-c is 99; expected");
        assertThat(Run.of("facing", season, "--for", "masson").err()).contains("expected one of mason, leafcutter");
    }

    private static double hottest(String file, String... options) {
        List<String> words = new ArrayList<>(List.of("facing", file, "--json"));
        words.addAll(List.of(options));
        Run run = Run.of(words.toArray(String[]::new));
        assertThat(run.exit()).as(run.err()).isZero();
        double hottest = 0;
        for (JsonNode week : JsonMapper.shared().readTree(run.out()).get("weeks")) {
            hottest = Math.max(hottest, week.get("tunnels_one_day_in_ten_c").asDouble());
        }
        return hottest;
    }

    /** Without a past spring there is no heat to tell. */
    @Test
    void withoutAPastSummerNoAnswerIsGiven() throws IOException {
        Path weather = Path.of(season).resolveSibling("winter.csv");
        Files.writeString(weather, "date,tmin_c,tmax_c,rain_mm\n2015-01-01,0,5,0\n2015-01-02,0,5,0\n");
        Path file = Files.writeString(
                Path.of(season).resolveSibling("winter.toml"),
                Files.readString(Path.of(season)).replace("tansy-lane-weather.csv", "winter.csv"));
        Run run = Run.of("facing", file.toString());
        assertThat(run.exit()).isEqualTo(3);
        assertThat(run.err()).contains("NY-FACING-WEATHER");
    }

    @Test
    void aDayMayBeAskedForAndAWrongOneIsRefused() {
        assertThat(Run.of("facing", season, "--on", "2015-06-21").exit()).isZero();
        Run wrong = Run.of("facing", season, "--on", "midsummer");
        assertThat(wrong.exit()).isEqualTo(2);
        assertThat(wrong.err()).contains("--on is \"midsummer\"; expected a date");
        assertThat(Run.of("facing", season + "x").exit()).isEqualTo(2);
    }

    /** The demo's site told by options is the demo's site: 40.78 N, 73.97 W, 40 m, front 135°, three points of skyline. */
    @Test
    void aPlaceToldByItselfIsRankedAsThatOfItsSeasonFile() {
        String weather =
                Path.of(season).resolveSibling("tansy-lane-weather.csv").toString();
        Run place = Run.of(
                (PLACE + " --horizon 200:20 --horizon 60:12 --horizon 120:5 --json --weather " + weather).split(" "));
        assertThat(place.exit()).as(place.err()).isZero();
        JsonSchemas.assertValid("facing.schema.json", place.out());
        JsonNode told = JsonMapper.shared().readTree(place.out());
        JsonNode file =
                JsonMapper.shared().readTree(Run.of("facing", season, "--json").out());
        assertThat(told.get("facings").size()).isEqualTo(8);
        assertThat(told.get("facings")).isEqualTo(file.get("facings"));
        assertThat(told.get("weeks")).isEqualTo(file.get("weeks"));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            facing | it is not clear where the house stands; expected either FILE, or --lat DEGREES, --lon DEGREES, --zone ZONE and --weather TABLE together.
            facing --lat 40 --lon 8 --zone UTC | it is not clear where the house stands
            facing a.toml --lat 40 | it is not clear where the house stands
            facing --lat 40 --lon 8 --zone Europe/Berlim --weather w.csv | --zone is "Europe/Berlim"; expected a time zone such as America/New_York.
            facing --lat 91 --lon 8 --zone UTC --weather w.csv | --lat is 91; expected a number from -90 to 90 degrees north.
            facing --lat 40 --lon 8 --zone UTC --weather w.csv --horizon 60,12 | --horizon is "60,12"; expected a direction and a height
            facing --lat 40 --lon 8 --zone UTC --weather w.csv --horizon 400:12 | --horizon is 400; expected a number from 0 to 360 degrees clockwise from north.
            facing --lat 40 --lon 8 --zone UTC --weather w.csv --horizon 60:1 --horizon 60:2 | --horizon has two heights for 60 degrees; expected each direction once.
            """)
    void aPlaceToldWronglyIsNamed(String command, String sentence) {
        Run run = Run.of(command.split(" "));
        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.err()).startsWith("nestyear: " + sentence).contains(" [NY-USAGE]");
    }
}
