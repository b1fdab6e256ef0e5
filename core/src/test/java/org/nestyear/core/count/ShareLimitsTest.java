package org.nestyear.core.count;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.distribution.discrete.BinomialDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.nestyear.core.stats.Draws;

class ShareLimitsTest {
    private static final double LEVEL = 0.95;

    /** Newcombe (1998a), Stat. Med. 17:857, Table I, printed to four decimals (Wilson as quoted, exact from memory). */
    @ParameterizedTest
    @CsvSource({
        "81, 263, 0.2553, 0.3662, 0.2527, 0.3676",
        "15, 148, 0.0624, 0.1605, 0.0578, 0.1617",
        "0, 20, 0, 0.1611, 0, 0.1684",
        "1, 29, 0.0061, 0.1718, 0.0009, 0.1776"
    })
    void publishedIntervalsOfOneShare(int found, int of, double low, double high, double exactLow, double exactHigh) {
        Tally tally = new Tally(found, of);
        check(ShareLimits.wilson(tally, LEVEL), low, high);
        check(ShareLimits.clopperPearson(tally, LEVEL), exactLow, exactHigh);
    }

    /** Newcombe (1998b), Stat. Med. 17:873, Table II, method 10, printed to four decimals. */
    @ParameterizedTest
    @CsvSource({
        "56, 70, 48, 80, 0.0524, 0.3339",
        "9, 10, 3, 10, 0.1705, 0.8090",
        "6, 7, 2, 7, 0.0582, 0.8062",
        "5, 56, 0, 29, -0.0381, 0.1926",
        "0, 10, 0, 20, -0.1611, 0.2775",
        "0, 10, 0, 10, -0.2775, 0.2775",
        "10, 10, 0, 20, 0.6791, 1",
        "10, 10, 0, 10, 0.6075, 1"
    })
    void publishedIntervalsOfADifference(int found, int of, int found2, int of2, double low, double high) {
        check(ShareLimits.difference(estimate(new Tally(found, of)), estimate(new Tally(found2, of2))), low, high);
    }

    /** None found: 1 − 0.05^(1/n), by hand; at 59 just under 5 %, the number trade books give for 5 % at 95 %. */
    @ParameterizedTest
    @CsvSource({"10, 0.2589", "20, 0.1391", "30, 0.0950", "50, 0.0582", "59, 0.0495", "100, 0.0295"})
    void noneFoundLeavesAnUpperBound(int n, double upper) {
        assertThat(ShareLimits.noneFoundUpper(n, LEVEL)).isCloseTo(upper, within(5e-5));
    }

    /** By definition the exact interval covers the true share at least as often as it says. */
    @ParameterizedTest
    @CsvSource({"12, 0.05", "12, 0.5", "40, 0.1", "40, 0.73", "7, 0.9"})
    void theExactIntervalCoversAtLeastItsLevel(int n, double truth) {
        BinomialDistribution binomial = new BinomialDistribution(n, truth);
        double covered = 0;
        for (int found = 0; found <= n; found++) {
            if (ShareLimits.clopperPearson(new Tally(found, n), LEVEL).contains(truth)) {
                covered += binomial.probability(found);
            }
        }
        assertThat(covered).isGreaterThanOrEqualTo(LEVEL).isLessThanOrEqualTo(1 + 1e-9);
    }

    /** Seeded: limits hold the share, stay within 0 and 1, mirror, and tighten with more counted or less confidence. */
    @Test
    void limitsBehave() {
        Draws draws = new Draws(41);
        for (int i = 0; i < 300; i++) {
            int n = 1 + (int) (draws.uniform() * 400);
            int found = (int) (draws.uniform() * (n + 1));
            Tally tally = new Tally(found, n);
            Tally mirrored = new Tally(n - found, n);
            for (Limits limits : List.of(ShareLimits.wilson(tally, LEVEL), ShareLimits.clopperPearson(tally, LEVEL))) {
                assertThat(limits.contains(tally.share())).as("%s", tally).isTrue();
                assertThat(limits.low()).isBetween(0.0, 1.0);
                assertThat(limits.high()).isBetween(0.0, 1.0);
            }
            assertThat(ShareLimits.wilson(mirrored, LEVEL).low())
                    .isCloseTo(1 - ShareLimits.wilson(tally, LEVEL).high(), within(1e-12));
            assertThat(ShareLimits.clopperPearson(mirrored, LEVEL).low())
                    .isCloseTo(1 - ShareLimits.clopperPearson(tally, LEVEL).high(), within(1e-9));
            assertThat(width(ShareLimits.wilson(new Tally(2.0 * found, 2.0 * n), LEVEL)))
                    .isLessThan(width(ShareLimits.wilson(tally, LEVEL)));
            assertThat(width(ShareLimits.wilson(tally, 0.8))).isLessThan(width(ShareLimits.wilson(tally, LEVEL)));
            assertThat(ShareLimits.difference(estimate(tally), estimate(tally)).contains(0))
                    .isTrue();
        }
    }

    /** Nests without any spread beyond chance leave the cells as they are; nests all of one kind count as nests. */
    @Test
    void nestsAreCountedByTheirSpread() {
        List<Tally> allOrNone = new ArrayList<>();
        List<Tally> even = new ArrayList<>();
        for (int i = 0; i < 40; i++) {
            allOrNone.add(new Tally(i % 2 == 0 ? 6 : 0, 6));
            even.add(new Tally(3, 6));
        }
        // Each nest all or none: variance between nests is that of 40 single ones, 6 times that of 240 cells, by 40/39.
        assertThat(new NestTallies(allOrNone).designEffect().orElseThrow()).isCloseTo(6 * 40 / 39.0, within(1e-12));
        assertThat(new NestTallies(even).designEffect().orElseThrow()).isCloseTo(0, within(1e-12));
        Tally effective = new NestTallies(even).effective(LEVEL);
        assertThat(effective.share()).isCloseTo(0.5, within(1e-12));
        // Student's quantile for 39 nests more is 2.0227, the normal one 1.9600 (tables).
        assertThat(effective.of()).isCloseTo(240 * Math.pow(1.959964 / 2.022691, 2), within(0.01));
        assertThat(new NestTallies(allOrNone).effective(LEVEL).of()).isLessThan(40);
    }

    /**
     * Seeded: with nests that differ, the interval by nest holds the truth about as often as it says, and the one that
     * ignores nests does not.
     */
    @Test
    void theIntervalByNestCoversWhereThePlainOneFails() {
        Draws draws = new Draws(77);
        int byNest = 0;
        int plain = 0;
        int tries = 1000;
        for (int i = 0; i < tries; i++) {
            List<Tally> nests = new ArrayList<>();
            for (int nest = 0; nest < 25; nest++) {
                double a = draws.gamma(0.8);
                double share = a / (a + draws.gamma(3.2));
                int found = 0;
                for (int cell = 0; cell < 8; cell++) {
                    found += draws.uniform() < share ? 1 : 0;
                }
                nests.add(new Tally(found, 8));
            }
            NestTallies all = new NestTallies(nests);
            byNest += ShareLimits.wilson(all.effective(LEVEL), LEVEL).contains(0.2) ? 1 : 0;
            plain += ShareLimits.wilson(all.total(), LEVEL).contains(0.2) ? 1 : 0;
        }
        assertThat(byNest / (double) tries).isBetween(0.93, 0.99);
        assertThat(plain / (double) tries).isLessThan(0.85);
    }

    @Test
    void nonsenseIsRefused() {
        assertThatThrownBy(() -> new Tally(3, 2)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Tally(0, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Tally(Double.NaN, 2)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> ShareLimits.wilson(new Tally(1, 2), 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> ShareLimits.noneFoundUpper(0, LEVEL)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new NestTallies(List.of(new Tally(1, 2))))
                .isInstanceOf(IllegalArgumentException.class);
    }

    private static double width(Limits limits) {
        return limits.high() - limits.low();
    }

    private static ShareLimits.Estimate estimate(Tally tally) {
        return new ShareLimits.Estimate(tally.share(), ShareLimits.wilson(tally, LEVEL));
    }

    private static void check(Limits limits, double low, double high) {
        assertThat(limits.low()).isCloseTo(low, within(5.1e-5));
        assertThat(limits.high()).isCloseTo(high, within(5.1e-5));
    }
}
