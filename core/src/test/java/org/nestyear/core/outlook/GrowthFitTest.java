package org.nestyear.core.outlook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.nestyear.core.stats.Draws;

class GrowthFitTest {
    private static final double LEVEL = 0.95;

    /** Grizzly bears of Yellowstone 1959-1997: Morris & Doak 2002, Quantitative Conservation Biology, table 3.1. */
    private static final int[] GRIZZLY = {
        44, 47, 46, 44, 46, 45, 46, 40, 39, 39, 42, 39, 41, 40, 33, 36, 34, 39, 35, 34, 38, 36, 37, 41, 39, 51, 47, 57,
        48, 60, 65, 74, 69, 65, 57, 70, 81, 99, 99
    };

    /** Females of the whooping crane 1938-1987, as two public codings of Dennis et al. 1991 hold them. */
    private static final int[] CRANE = {
        9, 11, 13, 8, 10, 10, 9, 11, 13, 15, 15, 17, 15, 12, 10, 12, 11, 14, 12, 13, 16, 17, 18, 19, 16, 16, 21, 22, 22,
        24, 25, 28, 28, 30, 25, 25, 24, 29, 34, 36, 37, 38, 39, 37, 36, 38, 43, 48, 55, 67
    };

    /** Printed in that book (from memory): mu 0.02134, sigma² 0.01305; the intervals by hand from t and χ² tables. */
    @Test
    void theGrizzlyBearsOfYellowstone() {
        GrowthFit fit = GrowthFit.of(series(1959, GRIZZLY));
        assertThat(fit.mu()).isCloseTo(0.02134, within(5e-6));
        assertThat(fit.sigma2()).isCloseTo(0.01305, within(5e-6));
        assertThat(fit.mu() - fit.muHalfWidth(LEVEL)).isCloseTo(-0.01621, within(5e-6));
        assertThat(fit.mu() + fit.muHalfWidth(LEVEL)).isCloseTo(0.05889, within(5e-6));
        assertThat(fit.sigma2Low(LEVEL)).isCloseTo(0.00867, within(6e-6));
        assertThat(fit.sigma2High(LEVEL)).isCloseTo(0.02184, within(6e-6));
        // The chance to fall to 20 within 50 years, and ever (exp(−2 μ d/σ²)), by hand.
        assertThat(fit.reach(20, 50)).isCloseTo(0.001846, within(1e-6));
        assertThat(fit.reach(20, 1e6)).isCloseTo(0.005351, within(1e-6));
    }

    /** Recomputed from the same series: mu 0.04097; sigma² 0.02069 with the changes less one below it. */
    @Test
    void theWhoopingCrane() {
        GrowthFit fit = GrowthFit.of(series(1938, CRANE));
        assertThat(fit.mu()).isCloseTo(0.04097, within(5e-6));
        assertThat(fit.sigma2()).isCloseTo(0.02069, within(1e-5));
    }

    /**
     * Years left out: the slope stays that of first and last count, and the regression of ln(N₂/N₁)/√τ on √τ, done here
     * with sums of its own, gives the same μ and σ².
     */
    @Test
    void missingYearsAreAllowedFor() {
        SortedMap<Integer, Double> counts = series(1959, GRIZZLY);
        counts.keySet().removeIf(year -> year % 7 == 0 || year % 5 == 1);
        GrowthFit fit = GrowthFit.of(counts);
        double xy = 0;
        double xx = 0;
        double yy = 0;
        int n = 0;
        int before = counts.firstKey();
        for (Map.Entry<Integer, Double> count : counts.tailMap(before + 1).entrySet()) {
            double x = Math.sqrt(count.getKey() - (double) before);
            double y = Math.log(count.getValue() / counts.getOrDefault(before, Double.NaN)) / x;
            xy += x * y;
            xx += x * x;
            yy += y * y;
            n++;
            before = count.getKey();
        }
        assertThat(n).isEqualTo(fit.transitions()).isLessThan(30);
        assertThat(fit.mu()).isCloseTo(xy / xx, within(1e-12));
        assertThat(fit.sigma2()).isCloseTo((yy - xy * xy / xx) / (n - 1), within(1e-12));
    }

    /** Seeded: of simulated walks the formula's share passes the target. Steps of 1/60 year; each misses some passages. */
    @Test
    void theChanceIsThatOfSimulatedWalks() {
        Draws draws = new Draws(6);
        double[][] cases = {{0.02, 0.02, 200, 10}, {-0.05, 0.04, 150, 8}, {0.1, 0.03, 60, 12}, {-0.03, 0.05, 50, 5}};
        for (double[] each : cases) {
            GrowthFit fit = new GrowthFit(each[0], each[1], 10, 10, 100);
            int steps = (int) (each[3] * 60);
            int passed = 0;
            int walks = 4000;
            double goal = Math.log(each[2] / 100);
            for (int walk = 0; walk < walks; walk++) {
                double x = 0;
                boolean reached = false;
                for (int step = 0; step < steps && !reached; step++) {
                    x += each[0] / 60 + Math.sqrt(each[1] / 60) * draws.normal();
                    reached = goal < 0 ? x <= goal : x >= goal;
                }
                passed += reached ? 1 : 0;
            }
            assertThat(fit.reach(each[2], each[3])).isCloseTo(passed / (double) walks, within(0.035));
        }
    }

    /** Seeded: chances are chances, grow with time, fall with distance, and lie about the middle of their range. */
    @Test
    void chancesBehave() {
        Draws draws = new Draws(19);
        for (int i = 0; i < 300; i++) {
            GrowthFit fit =
                    new GrowthFit(0.4 * draws.normal(), 0.001 + draws.uniform(), 8, 9, 20 + 100 * draws.uniform());
            double up = fit.last() * (1.01 + 5 * draws.uniform());
            double within = 1 + 30 * draws.uniform();
            double chance = fit.reach(up, within);
            assertThat(chance).isBetween(0.0, 1.0);
            assertThat(fit.reach(up, within + 1)).isGreaterThanOrEqualTo(chance - 1e-12);
            assertThat(fit.reach(up * 1.2, within)).isLessThanOrEqualTo(chance + 1e-12);
            assertThat(fit.reach(fit.last(), within)).isEqualTo(1);
            double mirrored = new GrowthFit(-fit.mu(), fit.sigma2(), 8, 9, fit.last())
                    .reach(fit.last() * fit.last() / up, within);
            assertThat(mirrored).isCloseTo(chance, within(1e-9));
        }
        GrowthFit fit = GrowthFit.of(series(1959, GRIZZLY));
        double[] range = fit.reachRange(150, 10, LEVEL);
        assertThat(fit.reach(150, 10)).isBetween(range[0], range[1]);
        assertThat(range).containsExactly(fit.reachRange(150, 10, LEVEL));
        assertThat(fit.reachRange(150, 10, 0.5)[0]).isGreaterThan(range[0]);
    }

    /**
     * Seeded: over simulated records with years left out, the intervals of μ and σ² and the range of the chance hold the
     * truth about as often as they say.
     */
    @Test
    void intervalsHoldTheTruthAsOftenAsTheySay() {
        Draws draws = new Draws(44);
        double mu = 0.03;
        double sigma2 = 0.04;
        int tries = 300;
        int held = 0;
        int heldSigma = 0;
        int heldChance = 0;
        for (int i = 0; i < tries; i++) {
            SortedMap<Integer, Double> counts = new TreeMap<>();
            double x = Math.log(100);
            for (int year = 2000; year <= 2016; year++) {
                if (year % 4 != 1) {
                    counts.put(year, Math.exp(x));
                }
                x += mu + Math.sqrt(sigma2) * draws.normal();
            }
            GrowthFit fit = GrowthFit.of(counts);
            double half = fit.muHalfWidth(LEVEL);
            held += Math.abs(fit.mu() - mu) <= half ? 1 : 0;
            heldSigma += fit.sigma2Low(LEVEL) <= sigma2 && sigma2 <= fit.sigma2High(LEVEL) ? 1 : 0;
            double truth =
                    new GrowthFit(mu, sigma2, fit.transitions(), fit.years(), fit.last()).reach(fit.last() * 1.5, 8);
            double[] range = fit.reachRange(fit.last() * 1.5, 8, LEVEL);
            heldChance += range[0] <= truth && truth <= range[1] ? 1 : 0;
        }
        assertThat(held / (double) tries).isBetween(0.91, 0.99);
        assertThat(heldSigma / (double) tries).isBetween(0.91, 0.99);
        assertThat(heldChance / (double) tries).isBetween(0.90, 0.995);
    }

    /** Far out in the tail nothing overflows: strong decline to a near target is all but sure, growth away from it never. */
    @Test
    void extremesStayFinite() {
        assertThat(new GrowthFit(-5, 0.001, 5, 5, 1000).reach(10, 50)).isCloseTo(1, within(1e-9));
        assertThat(new GrowthFit(5, 0.001, 5, 5, 1000).reach(10, 50)).isCloseTo(0, within(1e-9));
        assertThat(new GrowthFit(0.1, 0, 5, 5, 100).reach(200, 6)).isZero();
        assertThat(new GrowthFit(0.1, 0, 5, 5, 100).reach(200, 8)).isEqualTo(1);
    }

    @Test
    void nonsenseIsRefused() {
        assertThatThrownBy(() -> GrowthFit.of(series(2000, new int[] {3, 4})))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> GrowthFit.of(series(2000, new int[] {3, 0, 4})))
                .isInstanceOf(IllegalArgumentException.class);
        GrowthFit fit = GrowthFit.of(series(1959, GRIZZLY));
        assertThatThrownBy(() -> fit.reach(0, 10)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> fit.reach(10, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> fit.muHalfWidth(1)).isInstanceOf(IllegalArgumentException.class);
    }

    private static SortedMap<Integer, Double> series(int first, int[] counts) {
        SortedMap<Integer, Double> series = new TreeMap<>();
        for (int i = 0; i < counts.length; i++) {
            series.put(first + i, (double) counts[i]);
        }
        return series;
    }
}
