package org.nestyear.app.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.nestyear.app.JsonSchemas;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class LossesCommandTest {
    private static final String TALLY = """
            house,nest,nest_kind,year,cells,chalkbrood,mites,wasps,pollen_balls,birds
            pear tree,a1,reed,2024,8,1,0,0,1,0
            pear tree,a2,reed,2024,6,0,0,1,0,0
            pear tree,a3,reed,2024,9,4,0,0,0,0
            pear tree,a4,tray,2024,7,0,2,0,0,0
            shed,b1,tray,2024,8,0,0,0,1,0
            shed,b2,tray,2024,5,0,0,0,0,0
            shed,b3,reed,2024,9,0,0,1,0,0
            shed,b4,reed,2024,6,0,0,0,0,0
            """;

    @TempDir
    Path folder;

    @Test
    void theTableIsCountedByCause() throws IOException {
        JsonNode answer = json(write(TALLY));
        assertThat(answer.get("cells").asInt()).isEqualTo(58);
        assertThat(answer.get("alive").asInt()).isEqualTo(47);
        assertThat(answer.get("nests_ill").asInt()).isEqualTo(5);
        JsonNode losses = answer.get("losses");
        assertThat(losses.get(0).get("cause").asString()).isEqualTo("chalkbrood");
        assertThat(losses.get(0).get("found").asInt()).isEqualTo(5);
        double sum = 0;
        for (JsonNode line : losses) {
            sum += line.get("share").asDouble();
            assertThat(line.get("low").asDouble())
                    .isLessThanOrEqualTo(line.get("share").asDouble());
            assertThat(line.get("high").asDouble())
                    .isGreaterThan(line.get("share").asDouble());
        }
        assertThat(sum).isEqualTo(answer.get("lost").get("share").asDouble(), within(1e-8));
        JsonNode none = losses.get(losses.size() - 1);
        assertThat(none.get("cause").asString()).isEqualTo("robbed");
        // None of 58 cells and of 8 nests: 1 − 0.05^(1/58) and 1 − 0.05^(1/8).
        assertThat(none.get("high").asDouble()).isEqualTo(0.05034, within(5e-5));
        assertThat(none.get("upper_by_nest").asDouble()).isEqualTo(0.31234, within(5e-5));
        assertThat(none.get("design_effect").isNull()).isTrue();
        assertThat(answer.get("log_base").isNull()).isTrue();
        assertThat(answer.get("groups").size()).isEqualTo(4);
        assertThat(answer.get("comparisons").size()).isEqualTo(2);
        assertThat(answer.at("/comparisons/0/more_than_chance").asBoolean()).isFalse();
    }

    @Test
    void groupsAreComparedByOneCause() throws IOException {
        JsonNode answer = json(write(TALLY), "--cause", "chalkbrood");
        assertThat(answer.get("compared_by").asString()).isEqualTo("chalkbrood");
        assertThat(answer.at("/comparisons/0/first").asString()).isEqualTo("pear tree");
        assertThat(answer.at("/comparisons/0/difference").asDouble()).isEqualTo(5 / 30.0, within(1e-8));
        assertThat(Run.of("losses", write(TALLY).toString(), "--cause", "flies").err())
                .startsWith("nestyear: --cause is flies, which has no column in the tally; expected one of chalkbrood");
    }

    /** Lost in one house nearly always, in the other hardly ever: no chance makes that. */
    @Test
    void aClearDifferenceIsCalledSo() throws IOException {
        StringBuilder tally = new StringBuilder("house,cells,dead_young\n");
        for (int i = 0; i < 12; i++) {
            tally.append("a,8,")
                    .append(5 + i % 3)
                    .append("\nb,8,")
                    .append(i % 2)
                    .append('\n');
        }
        Path file = write(tally.toString());
        assertThat(json(file).at("/comparisons/0/more_than_chance").asBoolean()).isTrue();
        assertThat(text(file))
                .containsPattern(
                        "a lost 69 points more than b, between \\d+ more and \\d+ more: more than chance makes");
    }

    /** k of the causes add up to k of all, whatever the base, which is always told. */
    @Test
    void killValuesAddUp() throws IOException {
        for (String base : List.of("10", "e")) {
            JsonNode answer = json(write(TALLY), "--rates", base);
            double sum = 0;
            for (JsonNode rate : answer.get("rates")) {
                sum += rate.get("k").asDouble();
            }
            double all = base.equals("e") ? Math.log(58 / 47.0) : Math.log10(58 / 47.0);
            assertThat(answer.get("k_total").asDouble()).isEqualTo(all, within(1e-8));
            assertThat(sum).isEqualTo(all, within(1e-7));
            assertThat(answer.get("log_base").asString()).isEqualTo(base);
        }
        assertThat(text(write(TALLY), "--rates", "e")).contains("k with logarithms to base e");
        JsonNode nothing = json(write("cells,mites\n4,4\n6,6\n"), "--rates", "10");
        assertThat(nothing.get("k_total").isNull()).isTrue();
        assertThat(nothing.at("/rates/0/k").isNull()).isTrue();
        assertThat(nothing.at("/rates/0/alone").asDouble()).isEqualTo(1);
    }

    @Test
    void oneNestIsToldToBeOne() throws IOException {
        assertThat(text(write("cells,mites\n9,2\n"))).contains("Only one nest:").contains("too narrow");
        assertThat(text(write("cells,alive\n9,9\n8,8\n")))
                .startsWith("Alive: all 17 cells in 2 nests.")
                .contains("if those of a nest share their fate")
                .doesNotContain("More cells live");
        assertThat(text(write("cells,mites\n9,9\n8,8\n"))).contains("All were lost, so nests show no spread");
    }

    /** Never 2 and 3 of the practice rules: nothing small is cut open; leaf cells are never washed; bleach has its caution. */
    @Test
    void adviceKeepsThePracticeRules() throws IOException {
        String mason = text(write(TALLY));
        assertThat(mason)
                .contains("no cocoon or cell is cut open")
                .contains("rinse --item cocoon")
                .contains("Guests are never rinsed")
                .contains("Do not give or sell")
                .contains("never with vinegar, another acid or ammonia")
                .contains("dust mask");
        String leaf = text(write(TALLY), "--bees", "leafcutter");
        assertThat(leaf)
                .contains("Leaf cells are never washed at home")
                .doesNotContain("rinse --item cocoon")
                .doesNotContain("wash them in cool water");
        StringBuilder many = new StringBuilder("cells,chalkbrood\n");
        for (int i = 0; i < 60; i++) {
            many.append("8,").append(i % 12 == 0 ? 1 : 0).append('\n');
        }
        Path file = write(many.toString());
        // 480 cells less 5: at most 5 % of 475 may be cut open; 5 of 60 nests ill is under a tenth.
        assertThat(text(file)).contains("at most 5 % of them, 23").doesNotContain("more nests than a handbook");
        assertThat(text(file, "--bought")).contains("Keep them a full season in a house of their own");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            cells,mites;7,x              | :2:3: "x" stands in the tally; expected a whole number from 0 to 1,000,000. [NY-TALLY-NUMBER]
            cells,mites,wasps;7,4,4      | :2:1: the causes come to 8 of 7 cells; expected no more than the cells. [NY-TALLY-SUM]
            nest,cells,mites;a,5,0;a,4,1 | :3:1: the nest "a" stands there twice; expected a line a nest, its name once in a house and year. [NY-TALLY-TWICE]
            nest,cells,chlakbrood;a,5,0  | :1:12: the column "chlakbrood" is not one of a tally; expected one of house, nest
            cells,mites;7,"1             | :2:1: a quotation mark is opened and not closed again; expected
            cells,mites                  | :1:1: the table holds no nest; expected
            """)
    void wrongTalliesAreNamedByPlace(String lines, String sentence) throws IOException {
        Path file = write(lines.replace(';', '\n') + "\n");
        Run run = Run.of("losses", file.toString());
        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).startsWith(file + sentence);
        assertThat(run.err().lines().count()).isLessThanOrEqualTo(2);
    }

    @Test
    void wrongArgumentsAreNamed() throws IOException {
        String file = write(TALLY).toString();
        assertThat(Run.of("losses", file, "--bees", "honey").err())
                .startsWith("nestyear: --bees is \"honey\"; expected one of mason, leafcutter.");
        assertThat(Run.of("losses", file, "--rates", "2").err())
                .startsWith("nestyear: --rates is \"2\"; expected one of 10, e.");
        assertThat(Run.of("losses", file, "--level", "100").exit()).isEqualTo(2);
        assertThat(Run.of("losses", "no-such.csv").err()).contains("[NY-FILE-MISSING]");
    }

    private Path write(String text) throws IOException {
        return Files.writeString(folder.resolve("tally.csv"), text);
    }

    private static String text(Path file, String... more) {
        Run run = Run.of(words(file, more));
        assertThat(run.exit()).as(run.err()).isZero();
        assertThat(run.out().lines()).allMatch(line -> line.length() <= 80);
        return run.out().replaceAll("\\s+", " ");
    }

    private static JsonNode json(Path file, String... more) {
        List<String> words = new ArrayList<>(List.of(more));
        words.add("--json");
        Run run = Run.of(words(file, words.toArray(String[]::new)));
        assertThat(run.exit()).as(run.err()).isZero();
        JsonSchemas.assertValid("losses.schema.json", run.out());
        return JsonMapper.shared().readTree(run.out());
    }

    private static String[] words(Path file, String... more) {
        List<String> words = new ArrayList<>(List.of("losses", file.toString()));
        words.addAll(List.of(more));
        return words.toArray(String[]::new);
    }
}
