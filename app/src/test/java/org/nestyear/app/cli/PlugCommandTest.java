package org.nestyear.app.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.nestyear.app.JsonSchemas;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class PlugCommandTest {
    /**
     * Signs as published: sticky maggots and orange curly threads, pinholes of chalcids, pollen-like mites, hard grubs (Pacific
     * Northwest handbook); grass blades and tree crickets, smooth mud and spiders, resin (Minnesota bee atlas); clear film;
     * leaf, pulp and soil in M. pugnata (Medler 1964); aphids, wool and pebbles from memory.
     */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            --plug mud-rough --contents maggots --frass threads      | houdini-fly      | remove
            --plug mud-rough --contents cocoon-tough --frass pellets | mason-bee        | keep
            --plug leaf-cut --contents cocoon-leaf                   | leafcutter       | keep
            --plug leaf-pulp --wall leaf-pulp --contents cocoon-tough | mason-bee-leaf  | return
            --plug grass --contents crickets                         | grass-wasp       | return
            --plug mud-smooth --contents spiders                     | spider-wasp      | return
            --plug mud-smooth --contents caterpillars                | potter-wasp      | return
            --plug film --wall film --contents pollen-grub           | masked-bee       | return
            --plug resin --wall resin --contents pollen-grub         | resin-bee        | return
            --plug resin --contents aphids                           | aphid-wasp       | return
            --plug wool --wall wool                                  | carder-bee       | return
            --contents tiny-grubs --holes pinholes                   | parasitoid-wasps | remove
            --contents specks                                        | mites            | remove
            --contents hard-grub                                     | chalkbrood       | remove
            --contents hairy-grubs --frass powder                    | beetles          | remove
            --holes torn --contents nothing                          | birds            | remove
            --plug leaf-cut --contents pollen                        | pollen-ball      | remove
            """)
    void publishedSignsLeadToTheirMaker(String arguments, String id, String verdict) {
        JsonNode answer = json("plug " + arguments + " --json");
        assertThat(answer.at("/likely/0/id").asString()).isEqualTo(id);
        assertThat(answer.at("/likely/0/verdict").asString()).isEqualTo(verdict);
        assertThat(answer.at("/likely/0/share").asDouble()).isGreaterThan(0.5);
        assertThat(answer.at("/likely/0/does_not_fit").size()).isZero();
        assertThat(answer.get("card").size()).isZero();
        assertThat(answer.get("basis").size()).isEqualTo(8);
    }

    @Test
    void withoutAnswersTheWholeCardComesOut() {
        JsonNode card = json("plug --json");
        assertThat(card.get("card").size()).isGreaterThan(20);
        assertThat(card.get("words").size()).isGreaterThan(40);
        assertThat(card.get("sure").isNull()).isTrue();
        String text = text("plug");
        for (JsonNode word : card.get("words")) {
            assertThat(text)
                    .contains(word.get("word").asString(), word.get("meaning").asString());
        }
        for (JsonNode lodger : card.get("card")) {
            assertThat(text).contains(lodger.get("id").asString() + ": ");
        }
        assertThat(text).contains("never chilled, bagged or washed");
    }

    /** Smooth mud alone is two wasps alike: what lies in the cell tells them apart. */
    @Test
    void whatCannotBeToldIsNotTold() {
        JsonNode answer = json("plug --plug mud-smooth --json");
        assertThat(answer.get("sure").asString()).isEqualTo("cannot tell");
        assertThat(answer.get("next").asString()).isEqualTo("contents");
        assertThat(answer.at("/likely/0/share").asDouble())
                .isEqualTo(answer.at("/likely/1/share").asDouble(), within(1e-9));
        assertThat(text("plug --plug mud-smooth"))
                .startsWith("These signs do not tell.")
                .contains("Look next: What lies in the cell?")
                .contains("treat it as a guest");
        assertThat(text("plug --plug wool --contents spiders")).startsWith("Nothing on the card fits all of that.");
    }

    @Test
    void adviceIsForTheSeason() {
        String winter = text("plug --contents hard-grub --when winter");
        assertThat(winter).contains("Autumn and winter:").doesNotContain("Spring and summer:");
        String summer = text("plug --contents hard-grub --when summer");
        assertThat(summer).contains("Spring and summer:").doesNotContain("Autumn and winter:");
        assertThat(text("plug --contents hard-grub")).contains("Spring and summer:", "Autumn and winter:");
        assertThat(winter).contains("Caution: A dust mask");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            plug --plug mud             | nestyear: --plug is "mud"; expected one of mud-rough, mud-smooth, leaf-cut
            plug --contents spidres     | nestyear: --contents is "spidres"; expected one of cocoon-tough
            plug --when march           | nestyear: --when is "march"; expected one of spring, summer, autumn, winter.
            """)
    void wrongWordsAreNamed(String arguments, String sentence) {
        Run run = Run.of(arguments.split(" ", -1));
        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).startsWith(sentence).contains("[NY-USAGE]");
    }

    private static String text(String arguments) {
        Run run = Run.of(arguments.split(" ", -1));
        assertThat(run.exit()).as(run.err()).isZero();
        assertThat(run.out().lines()).allMatch(line -> line.length() <= 80);
        return run.out().replaceAll("\\s+", " ");
    }

    private static JsonNode json(String arguments) {
        Run run = Run.of(arguments.split(" ", -1));
        assertThat(run.exit()).as(run.err()).isZero();
        JsonSchemas.assertValid("plug.schema.json", run.out());
        return JsonMapper.shared().readTree(run.out());
    }
}
