package org.nestyear.checks.release;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.nestyear.checks.Comparison;
import org.nestyear.core.release.CurvePoint;
import org.nestyear.core.release.HoldBack;
import org.nestyear.core.release.ReleasePlan;
import org.nestyear.core.release.WholeBeeOdds;
import org.nestyear.core.season.Wintered;

/** The dial of what is held back: arithmetic of two independent lots (elementary probability) on the release curve. */
class HoldBackTest {
    private static final int YEARS = 10;
    private static final double ROUNDING = 1e-6;

    /** With bees and tunnels aplenty a share h held back costs h times what its later date loses. */
    @Test
    void whatIsHeldBackCostsItsShareOfTheLaterDate() {
        Draft draft = Draft.washington(YEARS);
        draft.females = 1000;
        draft.males = 100_000;
        draft.tunnels(1_000_000);
        draft.changed.put("lot_lost_chance", 0.1);
        ReleasePlan release = draft.plan().release();
        List<HoldBack> dial = release.holdBack();
        Comparison costs = new Comparison("cost of a share held back", ROUNDING);
        Comparison left = new Comparison("left when the first lot is lost", ROUNDING);
        Comparison lost = new Comparison("chance of losing all", ROUNDING);
        for (HoldBack each : dial) {
            CurvePoint later = release.curve().stream()
                    .filter(point -> point.date().equals(each.second()))
                    .findFirst()
                    .orElseThrow();
            costs.add("" + each.share(), each.cost(), each.share() * later.cost());
            left.add("" + each.share(), each.left(), each.share() * (1 - later.cost()));
            lost.add("" + each.share(), each.allLost(), each.share() == 0 ? 0.1 : 0.01);
        }
        costs.check(6);
        left.check(6);
        lost.check(6);
        assertThat(dial.get(0).share()).isZero();
        assertThat(dial.get(0).second()).isEqualTo(release.bestDate());
    }

    /** A few bees may all fly off: their chance of losing all is more than that of a strike, and it is counted bee by bee. */
    @Test
    void aHandfulMayLoseAllWithoutAStrike() {
        Draft draft = Draft.washington(YEARS);
        draft.females = 3;
        draft.males = 6;
        draft.changed.put("lot_lost_chance", 0.0);
        ReleasePlan release = draft.plan().release();
        WholeBeeOdds odds = Objects.requireNonNull(release.odds());
        List<HoldBack> dial = release.holdBack();
        assertThat(dial).hasSizeGreaterThan(3);
        assertThat(dial.get(0).allLost()).isEqualTo(odds.noneSettles()).isGreaterThan(0.1);
        assertThat(dial).allSatisfy(each -> assertThat(each.allLost()).isBetween(0.0, 1.0));
    }

    /** Bees that choose their own day cannot be held back. */
    @Test
    void outdoorsNothingIsHeldBack() {
        Draft draft = Draft.washington(YEARS);
        draft.wintered = Wintered.OUTDOORS;
        assertThat(draft.plan().release().holdBack()).isEmpty();
    }
}
