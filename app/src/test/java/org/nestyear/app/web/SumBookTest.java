package org.nestyear.app.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.nestyear.app.cli.CommandFace;
import org.nestyear.app.cli.CommandSums;
import org.nestyear.app.service.SmallSums;
import org.nestyear.app.service.UnitSystem;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Every calculator of the pages asks its command rightly and shows the numbers of the command's own JSON. */
class SumBookTest {
    private static final SmallSums SUMS = new CommandSums(OwnServer.CLOCK);
    private static final long SEED = 20261125;

    @TempDir
    Path folder;

    static Stream<Sum> sums() {
        return SumBook.all().stream();
    }

    static Stream<Arguments> sumsInBothUnits() {
        return sums().flatMap(sum -> Stream.of(UnitSystem.values()).map(units -> Arguments.of(sum, units)));
    }

    @Test
    void everyTaskOfTheKeeperIsThereOnce() {
        assertThat(SumBook.groups())
                .extracting(Sum.Group::title)
                .containsExactly("When", "Counting", "Opening", "Making", "Place", "Years");
        assertThat(SumBook.all()).extracting(Sum::slug).doesNotHaveDuplicates().hasSizeGreaterThan(20);
        assertThat(SumBook.all())
                .extracting(sum -> sum.command().get(0))
                .contains("emerge", "warm", "degree-days", "chill", "winter", "interval", "sample", "sex-count")
                .contains("rinse", "mud", "tunnels", "orchard", "range", "sun", "facing", "trend", "years");
    }

    @ParameterizedTest
    @MethodSource("sums")
    void aFormAsksOnlyWhatItsCommandKnowsAndAllItNeeds(Sum sum) {
        Map<String, Boolean> known = new HashMap<>();
        SUMS.wordsOf(sum.command().get(0)).forEach(word -> known.put(word.name(), word.required()));
        Set<String> told = new HashSet<>();
        sum.command().stream().skip(1).forEach(word -> told.add(word.replaceFirst("=.*", "")));
        sum.fields().forEach(field -> told.add(field.word()));
        assertThat(known.keySet()).containsAll(told);
        assertThat(told)
                .containsAll(known.keySet().stream()
                        .filter(name -> Objects.equals(known.get(name), true))
                        .toList());
        assertThat(sum.fields())
                .extracting(SumField::name)
                .doesNotHaveDuplicates()
                .doesNotContain("units", "t");
    }

    @ParameterizedTest
    @MethodSource("sumsInBothUnits")
    void theWorkedExampleHasTheNumbersOfTheCommand(Sum sum, UnitSystem units) throws IOException {
        SumInput example = SumInput.example(sum, units);
        SumAnswer answer = shown(example);
        // The plug card and the list of enemies answer in words.
        boolean words = sum.facts().isEmpty();
        assertThat(words).isEqualTo(Set.of("plug", "enemies").contains(sum.slug()));
        assertThat(answer.facts().isEmpty()).as("no facts").isEqualTo(words);
        assertThat(answer.lead())
                .isNotEmpty()
                .allSatisfy(line -> assertThat(line).isNotBlank());
        if (!words) {
            assertThat(answer.known()).as("how well it is known").isNotEmpty();
            assertSameNumbers(example, answer);
        }
        assertThat(answer.basis()).allSatisfy(line -> assertThat(line.link()).startsWith("/sources#"));
    }

    /** Typed numbers, drawn with a fixed seed. */
    @Test
    void drawnQuestionsGetTheNumbersOfTheCommand() throws IOException {
        Random random = new Random(SEED);
        int asked = 0;
        for (int i = 0; i < 12; i++) {
            int of = 1 + random.nextInt(500);
            assertSame("interval", Map.of("--found", random.nextInt(of + 1), "--of", of));
            assertSame("tunnels", Map.of("--species", "Osmia bicornis", "--females", 1 + random.nextInt(900)));
            assertSame("range", Map.of("--span-mm", (3 + random.nextInt(90)) / 10.0));
            assertSame(
                    "rinse",
                    Map.of(
                            "--item",
                            "gear",
                            "--label-percent",
                            1 + random.nextInt(14),
                            "--bleach",
                            1 + random.nextInt(900),
                            "--water",
                            1 + random.nextInt(20)));
            int min = random.nextInt(40) - 20;
            assertSame(
                    "degree-days",
                    Map.of("--min", min, "--max", min + random.nextInt(20), "--base", random.nextInt(12)));
            asked += 5;
        }
        assertThat(asked).isEqualTo(60);
    }

    private void assertSame(String slug, Map<String, ?> typed) throws IOException {
        Map<String, String> texts = new HashMap<>();
        typed.forEach((word, value) -> texts.put(word, String.valueOf(value)));
        SumInput input = new SumInput(SumBook.find(slug).orElseThrow(), UnitSystem.METRIC, texts);
        assertSameNumbers(input, shown(input));
    }

    /** In US units a bare number is in the unit of its label: 68 °F is 20 °C, a quarter cup 59.147 ml, an acre 0.4047 ha. */
    @ParameterizedTest
    @CsvSource({
        "degree-days, --min=39.2 --max=62.6 --base=41, degree-days --min 4 --max 17 --base 5",
        "rinse, --item=gear --label-percent=5 --bleach=1/4 --water=1, rinse --item gear --label-percent 5 --bleach 59.14705913ml --water 3785.411784ml",
        "orchard, --crop=apple --area=1 --species=Osmia_lignaria, orchard --crop apple --area 4046.8564224m2"
    })
    void aBareNumberIsInTheUnitOfItsLabel(String slug, String typed, String command) throws IOException {
        Map<String, String> texts = new HashMap<>();
        for (String each : typed.split(" ", -1)) {
            int equals = each.indexOf('=');
            texts.put(each.substring(0, equals), each.substring(equals + 1).replace('_', ' '));
        }
        Sum sum = SumBook.find(slug).orElseThrow();
        SumAnswer answer = shown(new SumInput(sum, UnitSystem.US, texts));
        JsonNode json = json(List.of(command.split(" ", -1)));
        assertThat(answer.facts()).isNotEmpty();
        for (int i = 0; i < sum.facts().size(); i++) {
            assertThat(Double.parseDouble(answer.facts().get(i).parts().get(0).raw()))
                    .isCloseTo(json.at("/" + sum.facts().get(i).paths().get(0)).asDouble(), within(1e-6));
        }
    }

    private SumAnswer shown(SumInput input) {
        PageHead head = new PageHead("", List.of(), "", "");
        SumsPage.Shown shown = new SumsPage(SUMS).page(head, input, true);
        assertThat(shown.view().problem()).isEmpty();
        assertThat(shown.view().fields()).extracting(SumsView.Field::problem).allMatch(String::isEmpty);
        return Objects.requireNonNull(shown.view().answer());
    }

    private void assertSameNumbers(SumInput input, SumAnswer answer) throws IOException {
        Path table = folder.resolve("table.csv");
        Files.writeString(table, input.table().orElse(""));
        JsonNode json = json(input.words(table));
        List<String> expected = new ArrayList<>();
        for (SumFact fact : input.sum().facts()) {
            for (String path : fact.paths()) {
                JsonNode node = json.at("/" + path);
                if (!node.isNull() && !node.isMissingNode()) {
                    expected.add(node.isNumber() ? String.valueOf(node.asDouble()) : node.asString());
                }
            }
        }
        List<String> shown = answer.facts().stream()
                .flatMap(fact -> fact.parts().stream())
                .map(SumAnswer.Part::raw)
                .map(raw -> raw.matches("-?[0-9.]+(E-?\\d+)?") ? String.valueOf(Double.parseDouble(raw)) : raw)
                .toList();
        assertThat(shown).isEqualTo(expected).isNotEmpty();
        assertThat(answer.basis()).hasSameSizeAs(json.get("basis"));
    }

    private static JsonNode json(List<String> command) {
        List<String> words = new ArrayList<>(command);
        words.add("--json");
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int exit = CommandFace.run(
                words.toArray(String[]::new),
                new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8),
                OwnServer.CLOCK,
                (arguments, answers, messages) -> 1);
        assertThat(exit).as(err.toString(StandardCharsets.UTF_8)).isZero();
        return JsonMapper.shared().readTree(out.toString(StandardCharsets.UTF_8));
    }
}
