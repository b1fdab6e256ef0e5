package org.nestyear.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class SumTextTest {
    @Test
    void linesBecomeAnswerReasonsAndHowWellItIsKnown() {
        SumText text = SumText.of(
                List.of(
                        "hang 3 of them.",
                        "They are small.",
                        "",
                        "How:",
                        "- with care",
                        "- slowly",
                        "",
                        "IF THE WEATHER TURNS BAD",
                        "Wait.",
                        "first males  Wed 17",
                        "looks to  sun  heat",
                        "east  1 min  2",
                        "",
                        "How well this is known: by counting. It holds.",
                        "Method: somebody 1927.",
                        "hole_width_mm 7.5 mm, measured: somebody."),
                1,
                Set.of("hole_width_mm"),
                Set.of("First males"));

        assertThat(text.lead()).containsExactly("Hang 3 of them.");
        assertThat(text.why())
                .extracting(SumAnswer.Block::heading)
                .containsExactly("", "How", "If the weather turns bad", "");
        assertThat(text.why().get(1).items()).containsExactly("with care", "slowly");
        assertThat(text.why().get(3).rows())
                .containsExactly(List.of("looks to", "sun", "heat"), List.of("east", "1 min", "2"));
        assertThat(text.why().get(3).headed()).isTrue();
        assertThat(text.known())
                .extracting(SumAnswer.Block::text)
                .containsExactly("By counting. It holds.", "Method: somebody 1927.");
    }

    @Test
    void withoutTheWordsTheLastSectionTellsHowWellItIsKnown() {
        SumText text = SumText.of(List.of("A.", "B.", "", "Measured."), 2, Set.of(), Set.of());
        assertThat(text.lead()).containsExactly("A.", "B.");
        assertThat(text.why()).isEmpty();
        assertThat(text.known()).extracting(SumAnswer.Block::text).containsExactly("Measured.");
    }

    @Test
    void aListUnderAFirstLineThatEndsInAColonIsInTheTableOfNumbers() {
        List<String> lines = List.of("From one day to another:", "82 portions", "3 hours", "", "Known.");
        assertThat(SumText.of(lines, 1, Set.of(), Set.of("Portions")).why()).isEmpty();
        assertThat(SumText.of(lines, 1, Set.of(), Set.of()).why()).hasSize(2);
    }
}
