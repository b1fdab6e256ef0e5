package org.nestyear.core.sexing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.nestyear.core.stats.Draws;

/** Seeded properties: invented lots whose sexes are known. */
class SexCountTest {
    private static final KnownSexes KNOWN = new KnownSexes(new Group(70, 17, 1), new Group(120, 22, 1), 10, 0.4, 10);

    @Test
    void theIntervalHoldsTheTruthAboutAsOftenAsItSays() {
        Draws draws = new Draws(4);
        int held = 0;
        int heldByKnown = 0;
        int lots = 25;
        for (int i = 0; i < lots; i++) {
            List<Sized> sizes = new ArrayList<>();
            int females = lot(draws, 150, 0.25 + 0.5 * draws.uniform(), 0, sizes);
            SexCount count = SexCount.byGroups(sizes, 0.9, i);
            held += count.low() <= females && females <= count.high() ? 1 : 0;
            check(count, 150);
            List<Sized> few = new ArrayList<>();
            int some = lot(draws, 40, 0.4, 10 * draws.normal(), few);
            SexCount known = SexCount.byKnown(few, KNOWN, 0.9, i);
            heldByKnown += known.low() <= some && some <= known.high() ? 1 : 0;
            check(known, 40);
        }
        // 90 % less three standard errors of 25 lots; the wider interval of two forms may hold more.
        assertThat(held).isGreaterThanOrEqualTo(18);
        assertThat(heldByKnown).isGreaterThanOrEqualTo(18);
    }

    private static void check(SexCount count, int cocoons) {
        assertThat(count.low()).isBetween(0.0, count.females());
        assertThat(count.high()).isBetween(count.females(), (double) cocoons);
        assertThat(count.sureFemales() + count.sureMales() + count.unsure()).isEqualTo(cocoons, within(1e-9));
        assertThat(count.groups().get(0).mean())
                .isLessThan(count.groups().get(1).mean());
        assertThat(count.rightShare()).isBetween(0.5, 1.0);
    }

    @Test
    void unitsAndOrderDoNotMatter() {
        List<Sized> sizes = new ArrayList<>();
        lot(new Draws(8), 120, 0.4, 0, sizes);
        List<Sized> turned = new ArrayList<>();
        for (Sized s : sizes) {
            turned.add(0, Sized.of(s.from() / 1000));
        }
        SexCount one = SexCount.byGroups(sizes, 0.9, 1);
        SexCount other = SexCount.byGroups(turned, 0.9, 1);
        assertThat(other.females()).isEqualTo(one.females(), within(1e-3));
        assertThat(other.cut() * 1000).isEqualTo(one.cut(), within(1e-3));
        assertThat(SexCount.byGroups(sizes, 0.9, 1)).isEqualTo(one);
    }

    /** Many fine sieves tell nearly what single sizes tell. */
    @Test
    void fineSievesAgreeWithSingleSizes() {
        List<Sized> sizes = new ArrayList<>();
        lot(new Draws(15), 400, 0.5, 0, sizes);
        List<Sized> sieves = new ArrayList<>();
        for (int from = 0; from < 220; from += 5) {
            int low = from;
            long count = sizes.stream()
                    .filter(s -> s.from() >= low && s.from() < low + 5)
                    .count();
            sieves.add(new Sized(low == 0 ? Double.NEGATIVE_INFINITY : low, low + 5, count));
        }
        for (boolean equal : new boolean[] {true, false}) {
            GroupFit points = GroupFit.two(sizes, equal);
            GroupFit classes = GroupFit.two(sieves, equal);
            assertThat(classes.cocoons()).isEqualTo(400);
            for (int k = 0; k < 2; k++) {
                assertThat(classes.groups().get(k).mean())
                        .isEqualTo(points.groups().get(k).mean(), within(2.0));
                assertThat(classes.groups().get(k).weight())
                        .isEqualTo(points.groups().get(k).weight(), within(0.04));
            }
        }
    }

    @Test
    void oneGroupIsNotTakenForTwo() {
        Draws draws = new Draws(16);
        int twos = 0;
        for (int i = 0; i < 15; i++) {
            List<Sized> sizes = new ArrayList<>();
            for (int k = 0; k < 120; k++) {
                sizes.add(Sized.of(100 + 15 * draws.normal()));
            }
            double two = Math.min(
                    GroupFit.two(sizes, true).bic(), GroupFit.two(sizes, false).bic());
            twos += two < GroupFit.one(sizes).bic() ? 1 : 0;
        }
        assertThat(twos).isLessThanOrEqualTo(2);
    }

    @Test
    void whatIsNoLotIsRefused() {
        assertThatThrownBy(() -> GroupFit.two(List.of(Sized.of(3), Sized.of(3)), true))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("do not differ");
        assertThatThrownBy(() -> new Sized(2, 1, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Sized.of(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Group(1, 0, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new KnownSexes(new Group(5, 1, 1), new Group(4, 1, 1), 0, 0.5, 1))
                .isInstanceOf(IllegalArgumentException.class);
    }

    private static int lot(Draws draws, int cocoons, double share, double shift, List<Sized> sizes) {
        int females = 0;
        for (int i = 0; i < cocoons; i++) {
            boolean female = draws.uniform() < share;
            females += female ? 1 : 0;
            sizes.add(Sized.of(shift + (female ? 120 + 22 * draws.normal() : 70 + 17 * draws.normal())));
        }
        return females;
    }
}
