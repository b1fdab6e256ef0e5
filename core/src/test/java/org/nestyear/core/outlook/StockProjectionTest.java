package org.nestyear.core.outlook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.nestyear.core.source.Basis;
import org.nestyear.core.source.Parameter;
import org.nestyear.core.source.ParameterTable;
import org.nestyear.core.source.ReadLog;
import org.nestyear.core.source.Source;
import org.nestyear.core.stats.Draws;

class StockProjectionTest {
    /** Growth nearly known, so that the chance can be worked out by hand. */
    private static GrowthBelief sure(double growth, double sd) {
        return new GrowthBelief(Math.log(growth), 1e9, sd * sd, 1e9, 0);
    }

    private static StockProjection plain(GrowthBelief growth, int years) {
        return new StockProjection(growth, 0.42, 0, 0, 0, Double.POSITIVE_INFINITY, years);
    }

    /** Large stock: ln(N) after two years is normal with mean 2 ln 1.5 and sd 0.4 √2; the chance to double is Φ(0.2082). */
    @Test
    void largeStocksFollowTheLogNormalLaw() {
        StockProjection projection = plain(sure(1.5, 0.4), 3);
        assertThat(projection.reach(100_000, 200_000)).isEqualTo(0.5825, within(0.025));
        double[] last = projection.run(100_000)[2];
        assertThat(StockProjection.quantile(last, 0.5)).isEqualTo(225_000, within(6000.0));
        assertThat(StockProjection.quantile(last, 0.9))
                .isEqualTo(225_000 * Math.exp(1.2816 * 0.5657), within(25_000.0));
    }

    /** One female settles with 0.42; then 1.5/0.42 daughters are expected, none with e^-3.571: chance of some 0.408. */
    @Test
    void smallStocksAreWholeBees() {
        assertThat(plain(sure(1.5, 1e-6), 2).reach(1, 1)).isEqualTo(0.42 * (1 - Math.exp(-1.5 / 0.42)), within(0.025));
        assertThat(plain(sure(1.5, 0.1), 4).run(0)[3]).containsOnly(0.0);
    }

    @Test
    void oneShortfallIsNotTheEnd() {
        GrowthBelief belief = sure(0.9, 0.6);
        StockProjection joined = new StockProjection(belief, 0.42, 0, 0, 3, Double.POSITIVE_INFINITY, 6);
        assertThat(joined.reach(0, 1)).isGreaterThan(0.9);
        StockProjection bought = new StockProjection(belief, 0.42, 5, 0, 0, Double.POSITIVE_INFINITY, 3);
        assertThat(bought.reach(0, 5)).isEqualTo(1);
    }

    @Test
    void moreBeesAndFewerGiftsNeverLowerTheChance() {
        Draws draws = new Draws(5);
        for (int i = 0; i < 12; i++) {
            long first = 5 + (long) (100 * draws.uniform());
            long target = 5 + (long) (100 * draws.uniform());
            GrowthBelief belief = new GrowthBelief(0.6 * draws.uniform(), 2, 0.3, 6, 0.5);
            StockProjection none = plain(belief, 4);
            StockProjection gifts = new StockProjection(belief, 0.42, 0, 5, 0, Double.POSITIVE_INFINITY, 4);
            StockProjection room = new StockProjection(belief, 0.42, 0, 0, 0, 10, 4);
            double chance = none.reach(first, target);
            assertThat(none.reach(first, target)).isEqualTo(chance);
            assertThat(none.reach(2 * first + 20, target)).isGreaterThanOrEqualTo(chance);
            assertThat(none.reach(first, target + 10)).isLessThanOrEqualTo(chance);
            assertThat(gifts.reach(first, target)).isLessThanOrEqualTo(chance);
            assertThat(room.reach(first, target)).isLessThanOrEqualTo(chance);
            long spare = none.spare(first, target, 0.6);
            assertThat(spare).isBetween(0L, first);
            if (spare > 0) {
                assertThat(none.reach(first - spare, target)).isGreaterThanOrEqualTo(0.6);
                assertThat(none.missing(first, target, 0.6)).isZero();
            }
            long missing = none.missing(first, target, 0.6);
            assertThat(missing).isGreaterThanOrEqualTo(0);
            assertThat(none.reach(first + missing, target)).isGreaterThanOrEqualTo(0.6);
        }
        StockProjection full = new StockProjection(sure(1, 0.1), 0.42, 0, 0, 0, 1, 3);
        assertThat(full.missing(10, 1000, 0.8)).isEqualTo(-1);
    }

    @Test
    void ownYearsWeighMoreTheMoreThereAre() {
        double before = 0;
        for (int n = 0; n <= 12; n++) {
            double[] own = new double[n];
            Arrays.fill(own, Math.log(2));
            GrowthBelief belief = GrowthBelief.of(own, new ReadLog(TABLE));
            if (n < 3) {
                assertThat(belief.ownWeight()).isZero();
                assertThat(Math.exp(belief.mean())).isEqualTo(1.28, within(1e-12));
                assertThat(Math.sqrt(belief.variance())).isEqualTo(0.6, within(1e-12));
            } else {
                // n / (n + 0.36/0.25)
                assertThat(belief.ownWeight())
                        .isEqualTo(n / (n + 1.44), within(1e-12))
                        .isGreaterThan(before);
                assertThat(Math.exp(belief.mean())).isBetween(1.28, 2.0);
            }
            before = belief.ownWeight();
        }
    }

    @Test
    void countsAreDrawnAsTheirLawsSay() {
        Draws draws = new Draws(77);
        for (double mean : new double[] {0.5, 12, 150, 900}) {
            double sum = 0;
            double squares = 0;
            double came = 0;
            for (int i = 0; i < 4000; i++) {
                double count = draws.poisson(mean);
                sum += count / 4000;
                squares += count * count / 4000;
                came += draws.binomial(Math.round(mean * 2), 0.42) / 4000.0;
            }
            double error = 4 * Math.sqrt(mean / 4000);
            assertThat(sum).isEqualTo(mean, within(error));
            assertThat((squares - sum * sum) / mean).isEqualTo(1, within(0.12));
            assertThat(came).isEqualTo(Math.round(mean * 2) * 0.42, within(error));
        }
        assertThat(draws.poisson(0)).isZero();
        assertThat(draws.binomial(7, 1)).isEqualTo(7);
        assertThatThrownBy(() -> draws.poisson(-1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> draws.binomial(3, 1.1)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void whatIsNoProjectionIsRefused() {
        assertThatThrownBy(() -> plain(sure(1, 1), 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new StockProjection(sure(1, 1), 0, 0, 0, 0, 1, 1))
                .isInstanceOf(IllegalArgumentException.class);
    }

    private static final ParameterTable TABLE = table();

    private static ParameterTable table() {
        Source source = new Source("invented", "invented for this test", "");
        List<Parameter> rows = new ArrayList<>();
        for (Object[] row : new Object[][] {
            {"growth_year", 1.28},
            {"growth_keepers_sd", 0.5},
            {"growth_years_sd", 0.6},
            {"growth_sd_worth", 4.0},
            {"growth_least_years", 3.0}
        }) {
            double value = (double) row[1];
            rows.add(new Parameter(
                    (String) row[0], value, "1", value, value, Basis.ASSUMED, source, "invented", "", ""));
        }
        return new ParameterTable("invented", rows);
    }
}
