package org.nestyear.checks.release;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.nestyear.checks.ReferenceWeather;
import org.nestyear.core.release.NoAnswerException;
import org.nestyear.core.release.TorchCheck;
import org.nestyear.core.release.TorchCount;
import org.nestyear.core.source.ReadLog;
import org.nestyear.core.species.Species;
import org.nestyear.core.weather.WeatherRecord;

/**
 * What a count in the dark says, where probability tells the answer: a seen bee is there; who is counted
 * alike every evening is nearly all seen; counts agree with themselves; what Bayes' rule gives from a prior lies between it and the count.
 */
class TorchCheckTest {
    private static final LocalDate RELEASED = LocalDate.of(2012, 3, 25);
    private static final LocalDate ON = LocalDate.of(2012, 4, 15);

    private static TorchCount count(Draft draft, Integer... counts) {
        draft.today = ON;
        draft.chillDays = 120;
        draft.keepFrom(LocalDate.of(2000, 1, 1));
        WeatherRecord known = ReferenceWeather.washington().upTo(ON).orElseThrow();
        Species bees = draft.bees();
        return TorchCheck.of(
                draft.inputs(), known, bees.parameters(), new ReadLog(bees.parameters()), RELEASED, List.of(counts));
    }

    private static Draft draft() {
        Draft draft = Draft.washington();
        draft.females = 200;
        draft.males = 360;
        draft.tunnels(500);
        return draft;
    }

    @Test
    void whoIsSeenIsThere() {
        TorchCount none = count(draft(), 0);
        assertThat(none.expected().middle()).isGreaterThan(5);
        List<Double> middles = new ArrayList<>();
        for (int counted : new int[] {0, 10, 30, 60, 100}) {
            TorchCount count = count(draft(), counted);
            assertThat(count.nesting().low()).isGreaterThanOrEqualTo(counted);
            assertThat(count.nesting().low())
                    .isLessThanOrEqualTo(count.nesting().middle());
            assertThat(count.nesting().middle())
                    .isLessThanOrEqualTo(count.nesting().high());
            assertThat(count.cellsStill().high())
                    .isGreaterThanOrEqualTo(count.cellsStill().low());
            middles.add(count.nesting().middle());
        }
        assertThat(middles).isSorted().doesNotHaveDuplicates();
        assertThat(none.lessChance()).isLessThan(0.05);
        assertThat(count(draft(), 100).lessChance()).isGreaterThan(0.95);
    }

    @Test
    void whoIsAlwaysTheSameIsNearlyAllSeen() {
        Draft sharp = draft();
        sharp.changed.put("torch_seen", 0.97);
        TorchCount count = count(sharp, 40, 40, 40, 40, 40, 40, 40, 40, 40, 40);
        assertThat(count.nesting().low()).isEqualTo(40);
        assertThat(count.nesting().high()).isLessThanOrEqualTo(48);
    }

    /** Several evenings say more than one: the band about the same mean is narrower. */
    @Test
    void moreEveningsSayMore() {
        TorchCount once = count(draft(), 30);
        TorchCount often = count(draft(), 29, 30, 31, 30);
        assertThat(often.nesting().high() - often.nesting().low())
                .isLessThan(once.nesting().high() - once.nesting().low());
    }

    @Test
    void moreThanWerePutOutAreRefused() {
        assertThatThrownBy(() -> count(draft(), 201))
                .isInstanceOf(NoAnswerException.class)
                .hasMessageContaining("200 females put out");
    }
}
