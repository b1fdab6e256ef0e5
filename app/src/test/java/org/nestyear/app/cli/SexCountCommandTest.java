package org.nestyear.app.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.nestyear.app.JsonSchemas;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class SexCountCommandTest {
    @TempDir
    Path folder;

    @Test
    void aLotOfTwoGroupsIsCountedByItsGroups() throws IOException {
        Path file = write(twoGroups());
        JsonNode answer = json(file, "Osmia lignaria");
        assertThat(answer.get("method").asString()).isEqualTo("two groups");
        assertThat(answer.get("cocoons").asInt()).isEqualTo(100);
        assertThat(answer.get("females").asDouble()).isEqualTo(40, within(3.0));
        assertThat(answer.get("two_group_bic").asDouble())
                .isLessThan(answer.get("one_group_bic").asDouble());
        assertThat(answer.get("components").get(1).get("mean").asDouble()).isEqualTo(120, within(5.0));
        assertThat(Run.of("sex-count", file.toString(), "--species", "Osmia lignaria")
                        .out()
                        .replaceAll("\\s+", " "))
                .contains("of these 100 cocoons of the blue orchard bee", "fall into two groups", "never all.");
        assertThat(json(file, "Osmia bicornis", "--mixed").get("method").asString())
                .isEqualTo("known sizes");
    }

    @Test
    void fewCocoonsAreCountedByTheKnownSizes() throws IOException {
        JsonNode answer = json(write("weight_mg;note\n62,5;a\n71;b\nNA;\n130;c\n94;d\n"), "Osmia bicornis");
        assertThat(answer.get("method").asString()).isEqualTo("known sizes");
        assertThat(answer.get("one_group_bic").isNull()).isTrue();
        assertThat(answer.get("cocoons").asInt()).isEqualTo(4);
        assertThat(answer.get("cannot_tell").asDouble()).isEqualTo(1);
        assertThat(answer.get("sure_females").asDouble()).isEqualTo(1);
        assertThat(answer.get("cut").asDouble()).isBetween(88.0, 104.0);
        assertThat(answer.get("right_share").asDouble()).isBetween(0.88, 0.93);
    }

    @Test
    void sievesAreCounted() throws IOException {
        JsonNode answer = json(write("count,sieve_mm\n48,6.2\n60,0\n"), "Osmia bicornis");
        assertThat(answer.get("measure").asString()).isEqualTo("sieve");
        assertThat(answer.get("cocoons").asInt()).isEqualTo(108);
        assertThat(answer.get("females").asDouble()).isEqualTo(46, within(6.0));
        assertThat(answer.get("low").asDouble()).isLessThan(40);
        assertThat(Run.of("sex-count", folder.resolve("sizes.csv").toString(), "--species", "Osmia bicornis")
                        .out())
                .contains("mm");
        assertThat(json(write("size_mm\n6.9\n5.5\n"), "Osmia bicornis")
                        .get("unit")
                        .asString())
                .isEqualTo("mm");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            weight_mg;62;x             | 2 | :3:1: "x" stands in the table of cocoons; expected milligrams from 5 to 1000. [NY-SIZES-NUMBER]
            weight_mg;0.062            | 2 | :2:1: "0.062" stands in the table of cocoons; expected milligrams from 5 to 1000. [NY-SIZES-RANGE]
            size_mm;60                 | 2 | :2:1: "60" stands in the table of cocoons; expected millimetres from 1 to 30. [NY-SIZES-RANGE]
            mass;62                    | 2 | :1:1: the table has the columns mass; expected a column "weight_mg" or "size_mm", or the columns "sieve_mm" and "count". [NY-SIZES-COLUMN]
            sieve_mm;6                 | 2 | :1:1: the table has the columns sieve_mm; expected
            weight_mg,size_mm;62,6     | 2 | :1:1: the table has the columns weight_mg, size_mm; expected one of them. [NY-SIZES-COLUMN]
            sieve_mm,count;6,3;6,4     | 2 | :3:1: the sieve 6 stands there twice; expected each sieve once. [NY-SIZES-TWICE]
            sieve_mm,count;6,3.5       | 2 | :2:3: "3.5" stands in the table of cocoons; expected a whole number from 0 to 1,000,000. [NY-SIZES-NUMBER]
            sieve_mm,count;6,0         | 2 | :1:1: the table holds no cocoon;
            weight_mg                  | 2 | :1:1: the table holds no cocoon;
            weight_mg;"62              | 2 | :2:1: a quotation mark is opened and not closed again
            weight_mg;62;90            | 3 | : the sexes cannot be told: with fewer than 60 cocoons the groups cannot be found in the lot itself, and the sizes of females and males of Osmia lignaria are not known. [NY-SEX-CANNOT-TELL]
            """)
    void wrongTablesAreNamedByLine(String lines, int exit, String sentence) throws IOException {
        Path file = write(lines.replace(';', '\n') + "\n");
        Run run = Run.of("sex-count", file.toString(), "--species", "Osmia lignaria");
        assertThat(run.exit()).as(run.err()).isEqualTo(exit);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).startsWith(file + sentence);
        assertThat(run.err().lines().count()).isLessThanOrEqualTo(2);
        assertThat(run.err()).doesNotContain("Maybe Maybe");
    }

    /** Sixty sons about 70 mg and forty daughters about 120 mg, invented. */
    static String twoGroups() {
        SplittableRandom random = new SplittableRandom(3);
        StringBuilder table = new StringBuilder("weight_mg\n");
        for (int i = 0; i < 100; i++) {
            double sum = 0;
            for (int k = 0; k < 12; k++) {
                sum += random.nextDouble();
            }
            table.append(i < 60 ? 70 + 9 * (sum - 6) : 120 + 12 * (sum - 6)).append('\n');
        }
        return table.toString();
    }

    private Path write(String text) throws IOException {
        return Files.writeString(folder.resolve("sizes.csv"), text);
    }

    private static JsonNode json(Path file, String species, String... more) {
        String[] words = new String[more.length + 5];
        words[0] = "sex-count";
        words[1] = file.toString();
        words[2] = "--species";
        words[3] = species;
        words[4] = "--json";
        System.arraycopy(more, 0, words, 5, more.length);
        Run run = Run.of(words);
        assertThat(run.exit()).as(run.err()).isZero();
        JsonSchemas.assertValid("sex-count.schema.json", run.out());
        return JsonMapper.shared().readTree(run.out());
    }
}
