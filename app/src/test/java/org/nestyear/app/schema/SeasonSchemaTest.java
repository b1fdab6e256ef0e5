package org.nestyear.app.schema;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.nestyear.app.JsonSchemas;
import org.nestyear.data.TextSource;
import org.nestyear.data.TomlText;
import org.tomlj.TomlParseResult;

class SeasonSchemaTest {
    private static final String SCHEMA = "season-1.schema.json";
    private static final Path SEASONS = Path.of("../data/src/test/resources");

    /** Faults that stand in no single value: order of dates, names that must exist elsewhere, other files. */
    private static final Set<String> ONLY_THE_PROGRAM_SEES = Set.of(
            "bloom-dates-swapped.toml",
            "bloom-in-quotes.toml",
            "bloom-of-another-year.toml",
            "community-peak-early.toml",
            "forecast-old.toml",
            "past-bloom-ahead.toml",
            "past-bloom-in-quotes.toml",
            "past-bloom-this-season.toml",
            "past-bloom-two-in-a-year.toml",
            "plant-without-dates.toml",
            "unknown-species.toml",
            "weather-after-today.toml",
            "weather-file-missing.toml",
            "weather-overlap.toml",
            "weather-swapped.toml",
            "zone-misspelt.toml");

    @Test
    void theDemoIsValid() throws IOException {
        TextSource demo = TextSource.ofResource(SeasonSchemaTest.class, "/demo/tansy-lane.toml");

        JsonSchemas.assertValid(SCHEMA, json(new String(demo.bytes(), StandardCharsets.UTF_8)));
    }

    @Test
    void aSeasonWithEveryKeyIsValid() throws IOException {
        JsonSchemas.assertValid(SCHEMA, json(Files.readString(SEASONS.resolve("season/low-meadow.toml"))));
    }

    @ParameterizedTest
    @MethodSource("badSeasons")
    void aBadSeasonIsRefusedUnlessOnlyTheProgramCanSeeIt(String name) throws IOException {
        String json = json(Files.readString(SEASONS.resolve("bad-season").resolve(name)));

        assertThat(JsonSchemas.errors(SCHEMA, json).isEmpty()).isEqualTo(ONLY_THE_PROGRAM_SEES.contains(name));
    }

    static List<String> badSeasons() throws IOException {
        try (Stream<Path> files = Files.list(SEASONS.resolve("bad-season"))) {
            List<String> names = files.filter(file -> file.toString().endsWith(".toml"))
                    .filter(SeasonSchemaTest::isToml)
                    .map(file -> file.getFileName().toString())
                    .sorted()
                    .toList();
            assertThat(names).hasSizeGreaterThan(40).containsAll(ONLY_THE_PROGRAM_SEES);
            return names;
        }
    }

    private static boolean isToml(Path file) {
        try {
            return !TomlText.parse(Files.readString(file)).hasErrors();
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    private static String json(String toml) {
        TomlParseResult parsed = TomlText.parse(toml);
        assertThat(parsed.errors()).isEmpty();
        return parsed.toJson();
    }
}
