package org.nestyear.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.nestyear.core.source.Parameter;
import org.nestyear.data.CatalogueFiles;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** No number in the tables of the small calculators is dead: each is in the basis of some answer. */
class SumsTablesTest {
    private static final List<String> TABLES = List.of("counting", "hygiene", "mud", "reach", "stocking");
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
            List.of("orchard", "--crop", "apple", "--trees", "9"),
            List.of("orchard", "--crop", "almond", "--trees", "9"),
            List.of("orchard", "--crop", "apple", "--trees", "9", "--species", "Osmia cornifrons"),
            List.of("orchard", "--crop", "almond", "--trees", "9", "--species", "Osmia cornifrons"),
            List.of("orchard", "--crop", "apple", "--trees", "9", "--species", "Osmia cornuta"));

    @Test
    void everyRowIsReadBySomeAnswer() {
        Set<String> read = new TreeSet<>();
        for (List<String> question : QUESTIONS) {
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
