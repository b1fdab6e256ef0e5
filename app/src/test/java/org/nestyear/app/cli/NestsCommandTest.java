package org.nestyear.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.nestyear.app.JsonSchemas;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The command {@code nests} on the demo's invented site and real weather. */
class NestsCommandTest {
    @TempDir
    Path folder;

    private String season = "";

    @BeforeEach
    void writeTheDemo() {
        Path into = folder.resolve("my-season");
        assertThat(Run.of("demo", "--write", into.toString()).exit()).isZero();
        season = into.resolve("tansy-lane.toml").toString();
    }

    private static JsonNode nests(String file, String plugged) {
        Run run = Run.of("nests", file, "--plugged", plugged, "--json");
        assertThat(run.exit()).as(run.err()).isZero();
        JsonSchemas.assertValid("nests.schema.json", run.out());
        return JsonMapper.shared().readTree(run.out()).get("nests");
    }

    private static LocalDate date(JsonNode nest, String name) {
        return LocalDate.parse(nest.get(name).asString());
    }

    /** Later plugs are ready later; two weeks stand between ready and cold (practice rule). */
    @Test
    void eachNestHasItsDates() {
        JsonNode nests = nests(season, "a1=2015-05-02,a2=2015-05-20,b1=2015-06-10");
        assertThat(nests.size()).isEqualTo(3);
        LocalDate before = LocalDate.MIN;
        for (JsonNode nest : nests) {
            assertThat(date(nest, "plugged")).isBefore(date(nest, "spun_early"));
            assertThat(date(nest, "spun_late")).isBefore(date(nest, "ready_late"));
            assertThat(date(nest, "ready_late").plusDays(14)).isEqualTo(date(nest, "cold_not_before"));
            assertThat(date(nest, "ready_late")).isAfter(before);
            before = date(nest, "ready_late");
        }
        assertThat(Run.of("nests", season, "--plugged", "a1=2015-05-02").out().replace('\n', ' '))
                .contains("may go into the cold from", "dark, winged bees");
    }

    /** Whitfield & Richards 1992: 116 degree-days above 15 °C; at about 24 °C in a New York July that is two weeks. */
    @Test
    void leafcuttersRestAsPrepupae() throws IOException {
        Path file = Files.writeString(
                Path.of(season).resolveSibling("leaf.toml"),
                Files.readString(Path.of(season)).replace("Osmia lignaria", "Megachile rotundata"));
        JsonNode nest = nests(file.toString(), "c1=2015-07-10").get(0);
        assertThat(date(nest, "ready_early")).isBetween(LocalDate.of(2015, 7, 17), LocalDate.of(2015, 7, 26));
        assertThat(date(nest, "ready_late")).isBetween(LocalDate.of(2015, 7, 22), LocalDate.of(2015, 8, 5));
        assertThat(Run.of("nests", file.toString(), "--plugged", "c1=2015-07-10")
                        .out())
                .contains("settled prepupae", "Neither chill nor bag them yet")
                .doesNotContain("cold not before");
    }

    @Test
    void wrongNestsAreRefused() {
        assertThat(Run.of("nests", season, "--plugged", "2015-05-02").err())
                .contains("expected the name of a nest and its day");
        assertThat(Run.of("nests", season, "--plugged", "a=May").err()).contains("expected a date");
        assertThat(Run.of("nests", season, "--plugged", "a=2015-05-02,a=2015-05-03")
                        .err())
                .contains("\"a\" twice");
    }
}
