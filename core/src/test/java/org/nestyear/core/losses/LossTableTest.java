package org.nestyear.core.losses;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.nestyear.core.count.Limits;
import org.nestyear.core.count.ShareLimits;
import org.nestyear.core.count.Tally;
import org.nestyear.core.stats.Draws;

class LossTableTest {
    /**
     * Weil (1970), litters of rats on a plain and on a treated diet, pups that lived over pups born, as Rao and Scott (1992,
     * table 1) use them. Numbers of the litters from memory; that they are right is shown by the sums and the design effects,
     * 1.232495 and 3.952861, printed in the manual of a package for prevented fractions.
     */
    private static final String PLAIN = "13/13 12/12 9/9 9/9 8/8 8/8 12/13 11/12 9/10 9/10 8/9 11/13 4/5 5/7 7/10 7/10";

    private static final String TREATED = "12/12 11/11 10/10 9/9 10/11 9/10 9/10 8/9 8/9 4/5 7/9 4/7 5/10 3/6 3/10 0/7";

    @Test
    void theDesignEffectsOfRaoAndScott() {
        CellShare plain = CellShare.of(litters(PLAIN, "plain"), OpenedNest::alive, 0.95);
        CellShare treated = CellShare.of(litters(TREATED, "treated"), OpenedNest::alive, 0.95);
        assertThat(plain.total().found()).isEqualTo(142);
        assertThat(plain.total().of()).isEqualTo(158);
        assertThat(treated.total().found()).isEqualTo(112);
        assertThat(treated.total().of()).isEqualTo(145);
        assertThat(plain.designEffect().orElseThrow()).isEqualTo(1.232495, within(5e-7));
        assertThat(treated.designEffect().orElseThrow()).isEqualTo(3.952861, within(5e-7));
        // Dead or alive, the spread is the same.
        assertThat(CellShare.of(litters(TREATED, "treated"), OpenedNest::lostInAll, 0.95)
                        .designEffect()
                        .orElseThrow())
                .isEqualTo(3.952861, within(5e-7));
    }

    /** Taken as independent the two diets differ; litter by litter chance may have made it (Rao and Scott find the same, from memory). */
    @Test
    void theTwoDietsCompared() {
        List<OpenedNest> all = new ArrayList<>(litters(PLAIN, "plain"));
        all.addAll(litters(TREATED, "treated"));
        Comparison comparison = Comparison.of(all, OpenedNest::house, OpenedNest::lostInAll, 0.95)
                .get(0);
        assertThat(comparison.found()).isEqualTo(16 / 158.0 - 33 / 145.0, within(1e-12));
        assertThat(comparison.isMoreThanChance()).isFalse();
        // By Newcombe with 158 and 145 independent pups.
        Limits naive = ShareLimits.difference(estimate(16, 158), estimate(33, 145));
        assertThat(naive.high()).isNegative();
        assertThat(comparison.difference().low()).isLessThan(naive.low());
    }

    /** With nests of one size the design effect is the mean square between nests over p(1 − p), an identity. */
    @Test
    void nestsOfOneSizeAgreeWithTheAnalysisOfVariance() {
        Draws draws = new Draws(5);
        for (int run = 0; run < 50; run++) {
            List<OpenedNest> nests = new ArrayList<>();
            int size = 8;
            double sum = 0;
            for (int i = 0; i < 12; i++) {
                int lost = (int) (draws.uniform() * (size + 1));
                nests.add(nest("", size, lost));
                sum += lost;
            }
            double p = sum / (size * nests.size());
            double between = 0;
            for (OpenedNest nest : nests) {
                between += size * Math.pow(nest.lostInAll() / (double) size - p, 2) / (nests.size() - 1.0);
            }
            CellShare share = CellShare.of(nests, OpenedNest::lostInAll, 0.95);
            assertThat(share.designEffect().orElseThrow()).isEqualTo(between / (p * (1 - p)), within(1e-9));
        }
    }

    @Test
    void oneNestAndNoneFoundAreTold() {
        CellShare one = CellShare.of(List.of(nest("", 20, 0)), OpenedNest::lostInAll, 0.95);
        assertThat(one.designEffect()).isEmpty();
        // None of 20: 1 − 0.05^(1/20) = 0.1391.
        assertThat(one.limits().high()).isEqualTo(0.1391, within(5e-5));
        assertThat(one.noneFoundUpperByNest()).isEqualTo(0.95, within(1e-12));
        CellShare few = CellShare.of(List.of(nest("", 20, 5)), OpenedNest::lostInAll, 0.95);
        assertThat(few.designEffect()).isEmpty();
        assertThat(few.worth().of()).isEqualTo(20);
        CellShare many = CellShare.of(Collections.nCopies(30, nest("", 5, 0)), OpenedNest::lostInAll, 0.95);
        assertThat(many.limits().high()).isEqualTo(-Math.expm1(Math.log(0.05) / 150), within(1e-12));
        // None in 30: 0.0950.
        assertThat(many.noneFoundUpperByNest()).isEqualTo(0.0950, within(5e-5));
    }

    /** Seventeen of seventeen cells alive in two nests say nothing of a level of 77 %; in thirty nests they do. */
    @Test
    void fewNestsClaimNothing() {
        CellShare two = CellShare.of(List.of(nest("", 9, 0), nest("", 8, 0)), OpenedNest::lostInAll, 0.95);
        assertThat(two.against(0.23)).isEqualTo(CellShare.Standing.OPEN);
        CellShare thirty = CellShare.of(Collections.nCopies(30, nest("", 8, 0)), OpenedNest::lostInAll, 0.95);
        assertThat(thirty.against(0.23)).isEqualTo(CellShare.Standing.BELOW);
        CellShare lost = CellShare.of(Collections.nCopies(30, nest("", 8, 8)), OpenedNest::lostInAll, 0.95);
        assertThat(lost.against(0.23)).isEqualTo(CellShare.Standing.ABOVE);
        CellShare one = CellShare.of(List.of(nest("", 100, 60)), OpenedNest::lostInAll, 0.95);
        assertThat(one.against(0.23)).isEqualTo(CellShare.Standing.OPEN);
    }

    @Test
    void theTableAddsUp() {
        List<OpenedNest> nests = List.of(
                new OpenedNest("a", "1", "reed", 2024, 9, Map.of(Cause.CHALKBROOD, 2, Cause.WASPS, 1)),
                new OpenedNest("b", "2", "tray", 2024, 7, Map.of(Cause.WASPS, 4)));
        LossTable table = LossTable.of(nests, List.of(Cause.CHALKBROOD, Cause.WASPS, Cause.MITES), 0.95);
        assertThat(table.cells()).isEqualTo(16);
        assertThat(table.alive()).isEqualTo(9);
        assertThat(table.lines().get(0).cause()).isEqualTo(Cause.WASPS);
        assertThat(table.nestsIll()).isEqualTo(2);
        double sum =
                table.lines().stream().mapToDouble(line -> line.share().share()).sum();
        assertThat(sum).isEqualTo(table.lost().share(), within(1e-12));
        assertThat(table.share(Cause.CHALKBROOD, Cause.WASPS).total().found()).isEqualTo(7);
    }

    /** Two groups of nests alike, cells of a nest going together: a difference is called real about once in twenty. */
    @Test
    void likeGroupsAreSeldomCalledDifferent() {
        Draws draws = new Draws(21);
        int called = 0;
        int naiveCalled = 0;
        int runs = 400;
        for (int run = 0; run < runs; run++) {
            List<OpenedNest> nests = new ArrayList<>();
            for (int i = 0; i < 40; i++) {
                // A nest fares well or badly: 5 or 45 % of its cells are lost, so that nests go together strongly.
                double share = draws.uniform() < 0.5 ? 0.05 : 0.45;
                int lost = 0;
                for (int cell = 0; cell < 8; cell++) {
                    lost += draws.uniform() < share ? 1 : 0;
                }
                nests.add(nest(i % 2 == 0 ? "a" : "b", 8, lost));
            }
            Comparison comparison = Comparison.of(nests, OpenedNest::house, OpenedNest::lostInAll, 0.95)
                    .get(0);
            called += comparison.isMoreThanChance() ? 1 : 0;
            naiveCalled += ShareLimits.difference(
                                    estimate(comparison.one().total().found(), 160),
                                    estimate(comparison.other().total().found(), 160))
                            .contains(0)
                    ? 0
                    : 1;
        }
        assertThat(called / (double) runs).isLessThan(0.08);
        assertThat(naiveCalled / (double) runs).isGreaterThan(0.12);
    }

    /** A real difference is found. */
    @Test
    void aLargeDifferenceIsCalledReal() {
        List<OpenedNest> nests = new ArrayList<>();
        for (int i = 0; i < 30; i++) {
            nests.add(nest("a", 8, i % 3));
            nests.add(nest("b", 8, 3 + i % 3));
        }
        Comparison comparison = Comparison.of(nests, OpenedNest::house, OpenedNest::lostInAll, 0.95)
                .get(0);
        assertThat(comparison.isMoreThanChance()).isTrue();
        assertThat(comparison.difference().high()).isNegative();
        nests.add(nest("c", 8, 2));
        List<Comparison> three = Comparison.of(nests, OpenedNest::house, OpenedNest::lostInAll, 0.95);
        assertThat(three).extracting(Comparison::first).containsExactly("a", "b", "c");
        assertThat(three).allMatch(each -> each.second().equals(Comparison.THE_OTHERS));
        // Each of three at 1 − 0.05/3, and a single nest is not called different by its cells alone.
        assertThat(three.get(0).one().level()).isEqualTo(1 - 0.05 / 3, within(1e-12));
        assertThat(Comparison.of(List.of(nest("", 5, 1)), OpenedNest::house, OpenedNest::lostInAll, 0.95))
                .isEmpty();
    }

    @Test
    void badNestsAreRefused() {
        assertThatThrownBy(() -> nest("a", 5, 6)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> nest("a", 0, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> nest("a", 5, -1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> CellShare.of(List.of(), OpenedNest::alive, 0.95))
                .isInstanceOf(IllegalArgumentException.class);
    }

    private static ShareLimits.Estimate estimate(double found, double of) {
        Tally tally = new Tally(found, of);
        return new ShareLimits.Estimate(tally.share(), ShareLimits.wilson(tally, 0.95));
    }

    private static List<OpenedNest> litters(String text, String house) {
        List<OpenedNest> litters = new ArrayList<>();
        for (String litter : List.of(text.split(" ", -1))) {
            int slash = litter.indexOf('/');
            int alive = Integer.parseInt(litter.substring(0, slash));
            int all = Integer.parseInt(litter.substring(slash + 1));
            litters.add(nest(house, all, all - alive));
        }
        return litters;
    }

    private static OpenedNest nest(String house, int cells, int lost) {
        return new OpenedNest(house, "", "", null, cells, Map.of(Cause.UNKNOWN, lost));
    }
}
