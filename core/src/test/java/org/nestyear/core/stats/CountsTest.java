package org.nestyear.core.stats;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.hipparchus.distribution.discrete.BinomialDistribution;
import org.hipparchus.distribution.discrete.PoissonDistribution;
import org.junit.jupiter.api.Test;

/** Against the distributions of the statistics library (Hipparchus), and sums that must be one. */
class CountsTest {
    @Test
    void agreeWithTheLibrary() {
        int checked = 0;
        for (double mean : new double[] {0.3, 4, 60}) {
            PoissonDistribution poisson = new PoissonDistribution(mean);
            for (int n = 0; n < 100; n += 7) {
                assertThat(Counts.poisson(n, mean)).isCloseTo(poisson.probability(n), within(1e-11));
                checked++;
            }
        }
        for (double chance : new double[] {0.05, 0.6, 0.97}) {
            BinomialDistribution binomial = new BinomialDistribution(40, chance);
            for (int k = 0; k <= 41; k++) {
                assertThat(Counts.binomial(k, 40, chance)).isCloseTo(binomial.probability(k), within(1e-11));
                assertThat(Counts.binomialAtMost(k, 40, chance))
                        .isCloseTo(binomial.cumulativeProbability(k), within(1e-11));
                checked++;
            }
        }
        assertThat(checked).isEqualTo(3 * 15 + 3 * 42);
    }

    @Test
    void noneIsSureWhereNoneIsExpected() {
        assertThat(Counts.poisson(0, 0)).isOne();
        assertThat(Counts.poisson(2, 0)).isZero();
        assertThat(Counts.binomial(3, 2, 0.5)).isZero();
        assertThat(Counts.binomialAtMost(2, 2, 0.5)).isOne();
    }
}
