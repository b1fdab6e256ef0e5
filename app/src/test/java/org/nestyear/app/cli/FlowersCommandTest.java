package org.nestyear.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.nestyear.app.JsonSchemas;
import org.nestyear.core.forage.GardenPlant;
import org.nestyear.core.source.Parameter;
import org.nestyear.data.CatalogueFiles;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The command {@code flowers} on the demo's invented orchard, and on summers of leafcutters. */
class FlowersCommandTest {
    private static final String[] JULY = {"--cells", "3", "--from", "2015-07-06", "--to", "2015-08-02"};

    @TempDir
    Path folder;

    private Path season = Path.of("");

    @BeforeEach
    void writeTheDemo() {
        Path into = folder.resolve("my-season");
        assertThat(Run.of("demo", "--write", into.toString()).exit()).isZero();
        season = into.resolve("tansy-lane.toml");
    }

    private Run flowers(String... more) {
        String[] words = new String[more.length + 2];
        words[0] = "flowers";
        words[1] = season.toString();
        System.arraycopy(more, 0, words, 2, more.length);
        return Run.of(words);
    }

    private void change(String from, String to) throws IOException {
        String text = Files.readString(season);
        assertThat(text).contains(from);
        Files.writeString(season, text.replace(from, to));
    }

    private static JsonNode json(Run run) {
        assertThat(run.exit()).as(run.err()).isZero();
        JsonSchemas.assertValid("flowers.schema.json", run.out());
        return JsonMapper.shared().readTree(run.out());
    }

    /** Apple feeds its own weeks; after it the neighbourhood's share is all there is, and the plan says so too. */
    @Test
    void theDemoFallsShortAfterAppleBloom() {
        JsonNode answer = json(flowers("--json"));
        assertThat(answer.get("region").asString()).isEqualTo("eastern-north-america");
        assertThat(answer.get("weeks").size()).isBetween(5, 10);
        JsonNode first = answer.get("weeks").get(0);
        assertThat(first.get("ratio").get("middle").asDouble()).isGreaterThan(1);
        assertThat(answer.get("gaps").size()).isEqualTo(1);
        JsonNode gap = answer.get("gaps").get(0);
        assertThat(gap.get("from").asString()).isBetween("2015-05-04", "2015-05-25");
        assertThat(gap.get("suggestions").size()).isBetween(3, 5);
        assertThat(gap.get("suggestions").get(0).get("standing").asString()).isEqualTo("native");
        assertThat(answer.get("leaf_plants").size()).isZero();

        assertThat(flowers().out().replace('\n', ' '))
                .startsWith("Flowers fall short from Mon ")
                .contains("The cells are those of the plan, with the blue orchard bee out on ")
                .contains("Plants without distance_m are taken to stand within 150 m.");
        String found = Run.of("plan", season.toString()).out().replaceAll("\\s+", " ");
        assertThat(found).contains("the flowers you told cannot feed all cells that the weather lets them build");
    }

    @Test
    void enoughIsSaidToBeEnough() throws IOException {
        change("cover_m2 = 90", "cover_m2 = 90000");
        JsonNode answer = json(flowers("--json", "--cells", "2", "--from", "2015-04-21", "--to", "2015-05-07"));
        assertThat(answer.get("gaps").size()).isZero();
        assertThat(answer.get("release").isNull()).isTrue();
        assertThat(flowers("--cells", "2", "--from", "2015-04-21", "--to", "2015-05-07")
                        .out())
                .startsWith("The flowers in reach can probably feed the cells of every week.");
    }

    @Test
    void noCellsWantNothing() {
        Run run = flowers("--cells", "0", "--from", "2015-04-21", "--to", "2015-05-07");
        assertThat(run.exit()).isZero();
        assertThat(run.out()).startsWith("Nothing to feed: no cell is expected of these bees.");
    }

    @Test
    void leafcuttersAreToldTheirCellsAndNamedTheirLeaves() throws IOException {
        change("species = \"Osmia lignaria\"", "species = \"Megachile rotundata\"");
        Run refused = flowers();
        assertThat(refused.exit()).isEqualTo(3);
        assertThat(refused.err()).contains("tansy-lane.toml:", "--cells, --from and --to", "[NY-FLOWERS-NO-CELLS]");

        JsonNode answer = json(flowers(with(JULY, "--json")));
        assertThat(answer.get("nectar_alfalfa_flowers_per_cell").asDouble()).isBetween(123.0, 128.0);
        assertThat(answer.get("leaf_suggestions").size()).isPositive();
        assertThat(answer.get("gaps").size()).isEqualTo(1);
        assertThat(flowers(JULY).out()).contains("LEAVES", "gives the soft leaves");

        change("[[community]]", "[[plant]]\nname = \"dog rose\"\ncover_m2 = 4\ndistance_m = 30\n\n[[community]]");
        assertThat(flowers(JULY).out().replace('\n', ' '))
                .contains(
                        "Leaves to cut: dog rose.",
                        "No dates told, so its bloom word in your region stands for them: dog");
    }

    private static String[] with(String[] words, String more) {
        String[] all = new String[words.length + 1];
        System.arraycopy(words, 0, all, 0, words.length);
        all[words.length] = more;
        return all;
    }

    @Test
    void withoutCoverThereIsNothingToHoldAgainst() throws IOException {
        change("cover_m2 = 90", "cover_m2 = 0");
        Run run = flowers();
        assertThat(run.exit()).isEqualTo(3);
        assertThat(run.err()).contains("cover_m2", "[NY-FLOWERS-NO-COVER]");
        change("cover_m2 = 0", "cover_m2 = 90\ndistance_m = 400");
        assertThat(flowers(JULY).exit()).isEqualTo(3);
    }

    @Test
    void whatIsOddOfAPlantIsSaid() throws IOException {
        change("cover_m2 = 90", "cover_m2 = 90\ndistance_m = 200");
        change("[[community]]", """
                [[plant]]
                name = "Nonesuch"
                cover_m2 = 4
                first_bloom = 2015-05-01
                last_bloom = 2015-05-20

                [[plant]]
                name = "avenue"
                species = "Prunus serrulata"
                cover_m2 = 40
                distance_m = 9

                [[plant]]
                name = "clover"
                cover_m2 = 40
                flowers_m2 = 900

                [[community]]""");
        String text = flowers(JULY).out().replaceAll("\\s+", " ");
        assertThat(text)
                .contains("Not in the plant list and taken for a common herb: Nonesuch.")
                .contains("Double flowers with little or no pollen: avenue.")
                .contains("Between 150 m and 300 m away and counted half: apple.")
                .contains("By the trade's rule of 300 ft (91 m) these would not count at all: apple.")
                .contains("clover 40 900 flowers");
    }

    @Test
    void wrongOptionsAreRefused() {
        assertThat(flowers("--cells", "3").err()).contains("of --cells, --from and --to some are given");
        Run swapped = flowers("--cells", "3", "--from", "2015-07-06", "--to", "2015-07-01");
        assertThat(swapped.exit()).isEqualTo(2);
        assertThat(swapped.err())
                .contains("--to is 2015-07-01; expected a day from 2015-07-06")
                .contains("Maybe the two are swapped.");
        assertThat(flowers("--cells", "many", "--from", "2015-07-06", "--to", "2015-07-09")
                        .exit())
                .isEqualTo(2);
        assertThat(Run.of("flowers", season + "x").exit()).isEqualTo(2);
        assertThat(Run.of("flowers").exit()).isEqualTo(2);
    }

    /** No number of the table is dead: each stands behind the answer to some garden. */
    @Test
    void everyNumberIsReadBySomeAnswer() throws IOException {
        change("species = \"Osmia lignaria\"", "species = \"Megachile rotundata\"");
        Set<String> read = new TreeSet<>(ids(json(flowers(with(JULY, "--json")))));
        StringBuilder all = new StringBuilder();
        for (GardenPlant plant : CatalogueFiles.flora().plants()) {
            all.append("[[plant]]\nname = \"").append(plant.name()).append("\"\ncover_m2 = 1\n\n");
        }
        change("[[community]]", all + "[[community]]");
        read.addAll(ids(json(flowers(with(JULY, "--json")))));
        int rows = 0;
        for (Parameter row : CatalogueFiles.flora().numbers().rows()) {
            assertThat(read).contains(row.id());
            rows++;
        }
        assertThat(rows).isGreaterThan(40);
    }

    private static Set<String> ids(JsonNode answer) {
        Set<String> ids = new TreeSet<>();
        answer.get("basis").forEach(row -> ids.add(row.get("id").asString()));
        return ids;
    }
}
