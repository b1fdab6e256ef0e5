package org.nestyear.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.nestyear.app.JsonSchemas;

class CheckFileCommandTest {
    private static final Path FIXTURES = Path.of("../data/src/test/resources");

    @Test
    void gapsAreListedByDate() {
        Path file = FIXTURES.resolve("weather/gap.csv");

        Run run = Run.of("check-file", file.toString());

        assertThat(run.exit()).isZero();
        assertThat(run.out()).isEqualTo(file + """
                        : no fault.
                        Weather: 4 days with both temperatures, Sun 1 March 2015 to Tue 10 March 2015.
                        Columns: date, tmin_c (°C), tmax_c (°C), rain_mm (mm).
                        No calendar year is complete.
                        3 gaps:
                          2015-03-03 to 2015-03-05 (3 days)
                          2015-03-07 to 2015-03-08 (2 days)
                          2015-03-10 (1 day)
                        """);
    }

    /** Invented values in a layout of GHCN-Daily, one of them marked as failed. */
    @Test
    void whatAStationFileLeavesOutIsSaid(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("station.csv");
        Files.writeString(file, """
                XX000000001,20150203,TMAX,78,,,X,2400
                XX000000001,20150203,TMIN,-15,,,X,2400
                XX000000001,20150204,TMAX,678,,I,X,2400
                XX000000001,20150204,TMIN,3,,,X,2400
                """);

        Run run = Run.of("check-file", file.toString());

        assertThat(run.exit()).isZero();
        assertThat(run.out())
                .contains(
                        ": no fault.",
                        "Weather: 1 days with both temperatures",
                        "1 value left out that failed a check of the service: 1 marked I (internal inconsistency).");
        assertThat(Run.of("check-file", file.toString(), "--json").out()).contains("\"notes\":[\"1 value left out");
    }

    @Test
    void theDemoIsWhole() {
        Run run = Run.of("check-file", "src/main/resources/demo/tansy-lane.toml");

        assertThat(run.exit()).isZero();
        assertThat(run.out())
                .contains(
                        "no fault",
                        "A season at Tansy Lane orchard, planned for Tue 10 March 2015",
                        "120 female and 210 male cocoons of Osmia lignaria (local), wintered: fridge",
                        "Free tunnels: 180.",
                        "Plants: apple (target); other bloom given.",
                        "1,461 days with both temperatures, Sun 1 January 2012 to Thu 31 December 2015",
                        "Complete calendar years: 2012, 2013, 2014, 2015.",
                        "No gap.");
    }

    @Test
    void everyFaultOfASeasonIsListed() {
        Run run = Run.of(
                "check-file", FIXTURES.resolve("bad-season/unknown-key.toml").toString());

        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.out()).contains(": 2 faults.", "unknown-key.toml:5:1:", "unknown-key.toml:3:1:");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "weather/gap.csv",
                "season/low-meadow.toml",
                "bad-season/unknown-species.toml",
                "bad-season/latitude-400.toml",
                "bad-weather/empty.csv",
                "bad-weather/tenths-of-a-degree.csv"
            })
    void theJsonKeepsToItsSchema(String name) {
        Run run = Run.of("check-file", FIXTURES.resolve(name).toString(), "--json");

        assertThat(run.exit()).isEqualTo(name.startsWith("bad") ? 2 : 0);
        JsonSchemas.assertValid("check-file.schema.json", run.out());
    }
}
