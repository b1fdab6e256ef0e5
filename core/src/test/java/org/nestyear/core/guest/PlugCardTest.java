package org.nestyear.core.guest;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.nestyear.core.source.Basis;
import org.nestyear.core.source.Source;
import org.nestyear.core.stats.Draws;

class PlugCardTest {
    private static final PlugCard.Weights WEIGHTS = new PlugCard.Weights(1, 0.3, 0.02, 3, 0.3);
    private static final List<Sign> SIGNS = List.of(
            new Sign(CardQuestion.PLUG, "mud", "mud"),
            new Sign(CardQuestion.PLUG, "leaf", "leaf"),
            new Sign(CardQuestion.PLUG, "none", "none"),
            new Sign(CardQuestion.CONTENTS, "prey", "prey"),
            new Sign(CardQuestion.CONTENTS, "pollen", "pollen"));

    private final PlugCard card = new PlugCard(
            List.of(
                    lodger("mason", Lodger.Often.OFTEN, "mud", "pollen"),
                    lodger("wasp", Lodger.Often.SOMETIMES, "mud", "prey"),
                    lodger("leafcutter", Lodger.Often.SELDOM, "leaf", "pollen")),
            SIGNS,
            WEIGHTS);

    /** By hand: mud weighs 3·1, 1·1 and 0.3·0.02; with prey 3·0.02, 1 and 0.3·0.02·0.02. */
    @Test
    void sharesAreThoseByHand() {
        List<PlugCard.Match> mud = card.matches(Map.of(CardQuestion.PLUG, "mud"));
        assertThat(mud.get(0).lodger().id()).isEqualTo("mason");
        assertThat(mud.get(0).share()).isEqualTo(3 / 4.006, within(1e-12));
        List<PlugCard.Match> prey = card.matches(Map.of(CardQuestion.PLUG, "mud", CardQuestion.CONTENTS, "prey"));
        assertThat(prey.get(0).lodger().id()).isEqualTo("wasp");
        assertThat(prey.get(0).share()).isEqualTo(1 / 1.06012, within(1e-9));
        assertThat(prey.get(0).against()).isEmpty();
        assertThat(prey.get(1).against()).containsExactly(CardQuestion.CONTENTS);
    }

    @Test
    void theNextQuestionIsTheOneThatTells() {
        assertThat(card.next(Map.of(CardQuestion.PLUG, "mud"))).contains(CardQuestion.CONTENTS);
        assertThat(card.next(Map.of(CardQuestion.PLUG, "mud", CardQuestion.CONTENTS, "prey")))
                .isEmpty();
    }

    /** Shares make one, and neither the order of lodgers nor that of answers matters. */
    @Test
    void sharesMakeOneWhateverIsAnswered() {
        Draws draws = new Draws(3);
        for (int run = 0; run < 100; run++) {
            Map<CardQuestion, String> given = new EnumMap<>(CardQuestion.class);
            for (Sign sign : SIGNS) {
                if (draws.uniform() < 0.5) {
                    given.put(sign.question(), sign.word());
                }
            }
            List<PlugCard.Match> matches = card.matches(given);
            assertThat(matches.stream().mapToDouble(PlugCard.Match::share).sum())
                    .isEqualTo(1, within(1e-12));
            List<Lodger> turned = new ArrayList<>(card.lodgers());
            Collections.reverse(turned);
            List<PlugCard.Match> other = new PlugCard(turned, SIGNS, WEIGHTS).matches(given);
            assertThat(other.get(0).share()).isEqualTo(matches.get(0).share(), within(1e-12));
        }
    }

    private static Lodger lodger(String id, Lodger.Often often, String plug, String contents) {
        return new Lodger(
                id,
                id,
                "",
                Lodger.Kind.BEE,
                often,
                Map.of(CardQuestion.PLUG, Set.of(plug), CardQuestion.CONTENTS, Set.of(contents)),
                Map.of(),
                Lodger.Verdict.RETURN,
                "leave it",
                "leave it",
                "never chill it",
                "",
                Basis.FROM_MEMORY,
                new Source("invented", "invented for this test", ""),
                "invented");
    }
}
