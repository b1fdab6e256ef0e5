package org.nestyear.app.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.nestyear.app.JsonSchemas;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class MudCommandTest {
    /** USDA class and Stokes by hand: loam; 44.5 s and 7.73 h over 10 cm at 20 °C. */
    @Test
    void classAndSettlingComeOut() {
        JsonNode answer = json("mud --sand 40 --silt 40 --clay 20 --json");
        assertThat(answer.get("texture_class").asString()).isEqualTo("loam");
        assertThat(answer.get("possible_classes")).hasSize(1);
        assertThat(answer.at("/settle_minutes/sand").asDouble()).isEqualTo(44.5 / 60, within(0.001));
        assertThat(answer.at("/settle_minutes/silt").asDouble()).isEqualTo(7.73 * 60, within(0.5));
        assertThat(answer.get("water_l_per_day").isNull()).isTrue();
    }

    @Test
    void aJarIsReadWithItsError() {
        JsonNode answer = json("mud --jar 40,25,8 --height 15cm --water-c 68F --json");
        assertThat(answer.get("sand_percent").asDouble()).isEqualTo(100 * 40 / 73.0, within(1e-6));
        assertThat(answer.get("height_mm").asDouble()).isEqualTo(150);
        assertThat(answer.get("water_c").asDouble()).isEqualTo(20, within(1e-9));
        assertThat(answer.get("error_points").asDouble()).isEqualTo(10);
        assertThat(answer.get("possible_classes").size()).isGreaterThan(1);
    }

    /** 30 × 40 cm at 2, 4 and 6 mm a day: 0.25, 0.50 and 0.76 l, by hand with the factor 1.05. */
    @ParameterizedTest
    @CsvSource({"2, 0.25", "4, 0.50", "6, 0.76"})
    void aTrayLosesWater(String et0, double litres) {
        assertThat(json("mud --sand 40 --silt 40 --clay 20 --tray 30x40cm --json --et0-mm " + et0)
                        .get("water_l_per_day")
                        .asDouble())
                .isEqualTo(litres, within(0.005));
    }

    /** FAO-56 example 20: Lyon (45.72° north), 15 July, 14.8 to 26.6 °C: 5.0 mm. */
    @Test
    void evaporationComesFromTheWeather() {
        JsonNode answer = json("mud --sand 40 --silt 40 --clay 20 --tray 1m2 --min-c 14.8 --max-c 26.6 --lat 45.72"
                + " --on 2015-07-15 --json");
        assertThat(answer.get("et0_mm").asDouble()).isEqualTo(5.0, within(0.06));
        assertThat(answer.get("water_l_per_day").asDouble()).isEqualTo(5.03 * 1.05, within(0.06));
    }

    /** No soil is turned down, and least of all for little clay (Pinilla-Gallego et al. 2018: loam and sandy loam). */
    @ParameterizedTest
    @CsvSource({"100,0,0", "92,5,3", "70,25,5", "40,40,20", "10,30,60", "0,100,0"})
    void noSoilFails(double sand, double silt, double clay) {
        Run run = Run.of("mud", "--sand", "" + sand, "--silt", "" + silt, "--clay", "" + clay);
        assertThat(run.exit()).isZero();
        assertThat(run.out().lines()).allMatch(line -> line.length() <= 80);
        assertThat(run.out().replaceAll("\\s+", " "))
                .contains("loam or sandy loam")
                .doesNotContainIgnoringCase("unsuitable")
                .doesNotContainIgnoringCase("fails")
                .doesNotContainIgnoringCase("too little clay");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            mud --sand 40 --silt 40 --clay 30 | sand, silt and clay add up to 110 %; expected 100 %.
            mud --sand 40 --silt 40 | it is not clear what the soil holds; expected either --sand, --silt and --clay in per cent, or --jar SAND,SILT,CLAY in mm.
            mud --sand 40 --silt 40 --clay 20 --jar 1,2,3 | it is not clear what the soil holds
            mud --sand -4 --silt 64 --clay 40 | --sand is -4; expected a number from 0 to 100 per cent.
            mud --jar 40,25 | --jar is "40,25"; expected three heights from below, sand, silt and clay, such as 40,25,8.
            mud --jar 40,x,8 | --jar is "x"; expected a number from 0 to 1000 mm for each layer.
            mud --jar 0,0,0 | --jar is "0,0,0"; expected layers of 5 mm or more together.
            mud --jar 40,25,8 --height 5km | --height is "5km"; expected a length with its unit
            mud --jar 40,25,8 --height 5m | --height is "5m"; expected from 10 mm to 1 m.
            mud --jar 40,25,8 --water-c 80 | --water-c is 80; expected a temperature from 1 to 40 °C
            mud --jar 40,25,8 --tray 30x40cm | it is not clear how fast the tray dries; expected --tray AREA with either --et0-mm MM, or
            mud --jar 40,25,8 --et0-mm 4 | it is not clear how fast the tray dries
            mud --jar 40,25,8 --tray 30x40 --et0-mm 4 | --tray is "30x40"; expected an area with its unit
            mud --jar 40,25,8 --tray 1ha --et0-mm 4 | --tray is "1ha"; expected at most 10 m2.
            mud --jar 40,25,8 --tray 1m2 --min-c 20 --max-c 10 --lat 45 --on 2015-04-20 | --min-c is above --max-c
            """)
    void wrongSoilsAreNamed(String arguments, String sentence) {
        Run run = Run.of(arguments.split(" ", -1));
        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).startsWith("nestyear: " + sentence).contains(" [NY-USAGE]");
    }

    private static JsonNode json(String arguments) {
        Run run = Run.of(arguments.split(" ", -1));
        assertThat(run.exit()).as(run.err()).isZero();
        JsonSchemas.assertValid("mud.schema.json", run.out());
        return JsonMapper.shared().readTree(run.out());
    }
}
