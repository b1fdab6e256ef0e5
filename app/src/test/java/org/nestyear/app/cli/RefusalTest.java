package org.nestyear.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Where no honest answer is possible the program says why in one sentence, answers nothing and ends with 3. */
class RefusalTest {
    private static final String SEASON = "tansy-lane.toml";
    private static final String WEATHER = "tansy-lane-weather.csv";

    @TempDir
    private Path folder = Path.of("");

    private String season = "";

    @BeforeEach
    void demo() throws IOException {
        season = resource(SEASON);
        Files.writeString(folder.resolve(WEATHER), resource(WEATHER));
    }

    @Test
    void aSpeciesOutsideItsPresentRange() throws IOException {
        assertThat(refused(season.replace("Osmia lignaria", "Osmia bicornis")))
                .contains("Osmia bicornis lives in Europe and its neighbours")
                .contains("local authority")
                .contains("NY-PLAN-RANGE");
    }

    @Test
    void theSouthernHemisphere() throws IOException {
        assertThat(refused(season.replace("latitude = 40.78", "latitude = -33.5")))
                .contains("south of the equator")
                .contains("local authority")
                .contains("NY-PLAN-SOUTH");
    }

    @Test
    void noPastYearOfWeather() throws IOException {
        String table = Files.readString(folder.resolve(WEATHER))
                .lines()
                .filter(line -> line.startsWith("date") || line.startsWith("2015"))
                .reduce("", (all, line) -> all + line + "\n");
        Files.writeString(folder.resolve(WEATHER), table);
        assertThat(refused(season)).contains("no past year").contains("NY-PLAN-NO-YEARS");
    }

    @Test
    void aLeafcutterBeeIsNotYetPlanned() throws IOException {
        Files.writeString(folder.resolve(SEASON), season.replace("Osmia lignaria", "Megachile rotundata"));
        assertThat(run(2))
                .contains("leafcutter bee")
                .contains("mason bees only")
                .contains("Maybe the command warm was meant")
                .contains(SEASON + ":");
    }

    private String refused(String text) throws IOException {
        Files.writeString(folder.resolve(SEASON), text);
        return run(3);
    }

    private String run(int expected) {
        Run run = Run.of("plan", folder.resolve(SEASON).toString());
        assertThat(run.exit()).isEqualTo(expected);
        assertThat(run.out()).isEmpty();
        return run.err();
    }

    private static String resource(String name) throws IOException {
        try (InputStream in = RefusalTest.class.getResourceAsStream("/demo/" + name)) {
            assertThat(in).as(name).isNotNull();
            return in == null ? "" : new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
