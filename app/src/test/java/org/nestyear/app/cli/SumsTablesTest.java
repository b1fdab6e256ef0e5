package org.nestyear.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.nestyear.core.source.Parameter;
import org.nestyear.data.CatalogueFiles;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** No number in the tables of the small calculators is dead: each is in the basis of some answer. */
class SumsTablesTest {
    private static final List<String> TABLES = List.of(
            "counting", "hygiene", "leafcutter_nesting", "mud", "outlook", "reach", "sexing", "siting", "stocking");
    private static final List<List<String>> QUESTIONS = List.of(
            List.of("sample", "--of", "nests", "--population", "40", "--prevalence", "5"),
            List.of("sample", "--of", "containers", "--population", "3"),
            List.of("sample", "--of", "containers", "--population", "70"),
            List.of("sample", "--of", "containers", "--population", "40"),
            List.of("sample", "--of", "containers", "--population", "20"),
            List.of("rinse", "--item", "cocoon", "--label-percent", "5", "--bleach", "60ml", "--water", "4l"),
            List.of("mud", "--jar", "4,4,4", "--tray", "1m2", "--et0-mm", "3"),
            List.of("range", "--span-mm", "2"),
            List.of("tunnels", "--species", "Osmia lignaria", "--females", "9"),
            List.of("tunnels", "--species", "Osmia bicornis", "--females", "9"),
            List.of("tunnels", "--species", "Megachile rotundata", "--females", "9"),
            List.of("orchard", "--crop", "alfalfa", "--area", "1ha", "--species", "Megachile rotundata"),
            List.of("orchard", "--crop", "canola", "--area", "1ha", "--species", "Megachile rotundata"),
            List.of("orchard", "--crop", "blueberry", "--area", "1ha", "--species", "Megachile rotundata"),
            List.of("orchard", "--crop", "apple", "--trees", "9"),
            List.of("orchard", "--crop", "almond", "--trees", "9"),
            List.of("orchard", "--crop", "apple", "--trees", "9", "--species", "Osmia cornifrons"),
            List.of("orchard", "--crop", "almond", "--trees", "9", "--species", "Osmia cornifrons"),
            List.of("orchard", "--crop", "apple", "--trees", "9", "--species", "Osmia cornuta"));

    @TempDir
    Path folder;

    /** Questions about a keeper's own table. */
    private List<List<String>> questionsWithTables() throws IOException {
        String weights = Files.writeString(folder.resolve("weights.csv"), "weight_mg\n62\n120\n")
                .toString();
        String widths = Files.writeString(folder.resolve("widths.csv"), "size_mm\n6.2\n7\n")
                .toString();
        String years = Files.writeString(folder.resolve("years.csv"), "year,females_out\n2015,20\n")
                .toString();
        assertThat(Run.of("demo", "--write", folder.resolve("season").toString())
                        .exit())
                .isZero();
        String season = folder.resolve("season/tansy-lane.toml").toString();
        return List.of(
                List.of("facing", season),
                List.of("facing", season, "--for", "leafcutter"),
                List.of("sex-count", weights, "--species", "Osmia bicornis"),
                List.of("sex-count", weights, "--species", "Osmia cornuta"),
                List.of("sex-count", widths, "--species", "Osmia bicornis"),
                List.of("sex-count", widths, "--species", "Osmia cornuta"),
                List.of("years", years));
    }

    @Test
    void everyRowIsReadBySomeAnswer() throws IOException {
        Set<String> read = new TreeSet<>();
        List<List<String>> questions = new ArrayList<>(QUESTIONS);
        questions.addAll(questionsWithTables());
        for (List<String> question : questions) {
            List<String> words = new ArrayList<>(question);
            words.add("--json");
            Run run = Run.of(words.toArray(String[]::new));
            assertThat(run.exit()).as(run.err()).isZero();
            for (JsonNode row : JsonMapper.shared().readTree(run.out()).get("basis")) {
                read.add(row.get("id").asString());
            }
        }
        int rows = 0;
        for (String table : TABLES) {
            for (Parameter row : CatalogueFiles.sums(table).rows()) {
                assertThat(read).as("table " + table).contains(row.id());
                rows++;
            }
        }
        assertThat(rows).isGreaterThan(45);
    }
}
