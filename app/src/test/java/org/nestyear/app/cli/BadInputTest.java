package org.nestyear.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Bad files end in exit code 2 with one sentence on standard error; nothing is answered and nothing written. */
class BadInputTest {
    private static final Path FIXTURES = Path.of("../data/src/test/resources");

    @ParameterizedTest
    @CsvFileSource(files = "../data/src/test/resources/bad-season/expected.csv", numLinesToSkip = 1)
    void aBadSeasonIsRefused(String name, String code, String in, int line, int column) throws IOException {
        Map<Path, Long> before = snapshot();

        Run run = Run.of("plan", FIXTURES.resolve("bad-season").resolve(name).toString());

        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        Path file = FIXTURES.resolve("bad-season").resolve(in);
        assertThat(run.err())
                .startsWith(file + ":" + line + ":" + column + ": ")
                .contains(". [" + code + "]\n");
        assertThat(run.err().lines().count()).isLessThanOrEqualTo(2);
        assertThat(snapshot()).isEqualTo(before);
    }

    @Test
    void anUnknownSpeciesPointsToItsLine() {
        Path file = FIXTURES.resolve("bad-season/unknown-species.toml");

        Run run = Run.of("plan", file.toString());

        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err())
                .isEqualTo(file + ":17:11: \"Osmia lignria\" is not a species of the catalogue; expected one of Osmia"
                        + " lignaria, Osmia cornifrons, Osmia bicornis, Osmia cornuta. [NY-SEASON-SPECIES]\n"
                        + "Maybe \"Osmia lignaria\" was meant.\n");
    }

    @ParameterizedTest
    @ValueSource(strings = {"fahrenheit.csv", "dates-out-of-order.csv", "empty.csv", "two-places.csv"})
    void aBadWeatherTableIsReported(String name) {
        Path file = FIXTURES.resolve("bad-weather").resolve(name);

        Run run = Run.of("check-file", file.toString());

        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.out())
                .startsWith(file + ": 1 fault.\n")
                .contains(file + ":")
                .contains("; expected ");
        assertThat(run.err()).isEmpty();
    }

    @Test
    void aMissingFileIsRefused() {
        for (String command : new String[] {"plan", "check-file"}) {
            Run run = Run.of(command, "no-such.toml");

            assertThat(run.exit()).isEqualTo(2);
            assertThat(run.out()).isEmpty();
            assertThat(run.err())
                    .startsWith("no-such.toml: there is no such file; expected")
                    .contains("[NY-FILE-MISSING]");
        }
    }

    private static Map<Path, Long> snapshot() throws IOException {
        Map<Path, Long> stamps = new TreeMap<>();
        try (Stream<Path> files = Files.walk(FIXTURES)) {
            for (Path file : (Iterable<Path>) files::iterator) {
                stamps.put(file, Files.getLastModifiedTime(file).toMillis());
            }
        }
        assertThat(stamps).hasSizeGreaterThan(60);
        return stamps;
    }
}
