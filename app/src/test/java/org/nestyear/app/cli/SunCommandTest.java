package org.nestyear.app.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.nestyear.app.JsonSchemas;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class SunCommandTest {
    /**
     * The worked example of Reda and Andreas (2004), table A5.1: zenith angle 50.11162°, azimuth 194.34024°, sunrise
     * 06:12:43 local. The example takes ΔT as 67 s, the program estimates it for the year, hence the tolerance of a
     * thousandth of a degree. Its sunset, 17:20:19, is that of the universal day, which is the evening before by local
     * time.
     */
    @Test
    void thePublishedExampleComesOut() {
        JsonNode sun = json(
                "sun",
                "--lat",
                "39.742476",
                "--lon",
                "-105.1786",
                "--at",
                "2003-10-17T12:30:30-07:00",
                "--elevation-m",
                "1830.14",
                "--pressure-hpa",
                "820",
                "--air-c",
                "11",
                "--json");

        assertThat(sun.get("zenith_deg").asDouble()).isEqualTo(50.11162, within(0.001));
        assertThat(sun.get("azimuth_deg").asDouble()).isEqualTo(194.34024, within(0.001));
        assertThat(sun.get("sunrise").asString()).isEqualTo("2003-10-17T06:12:43-07:00");
        JsonNode eve =
                json("sun", "--lat", "39.742476", "--lon", "-105.1786", "--at", "2003-10-16T12:00:00-07:00", "--json");
        assertThat(eve.get("sunset").asString()).isEqualTo("2003-10-16T17:20:19-07:00");
        assertThat(sun.get("facade_w_m2").isNull()).isTrue();
        assertThat(sun.get("basis")).isEmpty();
    }

    @Test
    void aFrontAddsItsLightAndItsBasis() {
        JsonNode sun = json(
                "sun",
                "--lat",
                "40.78",
                "--lon",
                "-73.97",
                "--at",
                "2015-04-20T10:00:00-04:00",
                "--faces",
                "135",
                "--json");

        assertThat(sun.get("facade_w_m2").asDouble()).isGreaterThan(100);
        assertThat(sun.get("basis")).hasSize(1);
        assertThat(sun.get("basis").get(0).get("kind").asString()).isEqualTo("common-practice");
    }

    /** At 70° north the sun neither sets at midsummer nor rises at midwinter. */
    @Test
    void polarDaysHaveNoSunrise() {
        JsonNode summer = json("sun", "--lat", "70", "--lon", "25", "--at", "2015-06-21T12:00:00Z", "--json");
        JsonNode winter = json("sun", "--lat", "70", "--lon", "25", "--at", "2015-12-21T12:00:00Z", "--json");

        assertThat(summer.get("sun").asString()).isEqualTo("stays up");
        assertThat(summer.get("sunrise").isNull()).isTrue();
        assertThat(winter.get("sun").asString()).isEqualTo("stays down");
        assertThat(winter.get("clear_sky_w_m2").asDouble()).isZero();
        assertThat(Run.of("sun", "--lat", "70", "--lon", "25", "--at", "2015-12-21T12:00:00Z")
                        .out())
                .contains("below the horizon", "It does not rise that day.");
    }

    @Test
    void theTextNamesPlaceTimesAndMethods() {
        Run run = Run.of(
                "sun", "--lat", "40.78", "--lon", "-73.97", "--at", "2015-04-20T10:00:00-04:00", "--faces", "135");

        assertThat(run.exit()).isZero();
        assertThat(run.out().lines()).allMatch(line -> line.length() <= 80, "at most 80 characters");
        assertThat(run.out().replaceAll("\\s+", " "))
                .startsWith("On Mon 20 April 2015 at 10:00 (UTC-04:00) the sun stands ")
                .contains("It rises at 06:", "a front that looks to 135° gets", "Reda & Andreas 2004");
    }

    private static JsonNode json(String... arguments) {
        Run run = Run.of(arguments);
        assertThat(run.exit()).isZero();
        assertThat(run.err()).isEmpty();
        JsonSchemas.assertValid("sun.schema.json", run.out());
        return JsonMapper.shared().readTree(run.out());
    }
}
