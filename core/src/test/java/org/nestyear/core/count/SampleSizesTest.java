package org.nestyear.core.count;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.nestyear.core.stats.Draws;

class SampleSizesTest {
    /** Electronic tables of Cannon & Roe: 1,600 in all, 1 %, 99 % → 399; the others by hand from their formula. */
    @ParameterizedTest
    @CsvSource({
        "1600, 0.01, 0.99, 399",
        "10, 0.1, 0.95, 10",
        "20, 0.1, 0.95, 16",
        "30, 0.05, 0.95, 23",
        "50, 0.2, 0.95, 12",
        "100, 0.05, 0.95, 45",
        "150, 0.02, 0.95, 95",
        "200, 0.05, 0.95, 51",
        "500, 0.1, 0.95, 28",
        "1000, 0.01, 0.95, 258",
        "10000, 0.02, 0.95, 148"
    })
    void cannonAndRoe(int population, double prevalence, double confidence, int expected) {
        assertThat(new Freedom(population, prevalence, confidence).sampleSize()).isEqualTo(expected);
    }

    /** Exact odds where they ask for one fewer (hypergeometric, by hand). */
    @ParameterizedTest
    @CsvSource({"20, 0.5, 4", "30, 0.5, 4", "200, 0.2, 13", "100, 0.05, 45"})
    void exactOdds(int population, double prevalence, int expected) {
        assertThat(new Freedom(population, prevalence, 0.95).exactSampleSize()).isEqualTo(expected);
    }

    /** ln(1 − C)/ln(1 − p): the aquatic animal-health code prints about 150, 60 and 30 for 2, 5 and 10 %. */
    @ParameterizedTest
    @CsvSource({
        "0.01, 0.95, 299",
        "0.02, 0.95, 149",
        "0.05, 0.95, 59",
        "0.1, 0.95, 29",
        "0.2, 0.95, 14",
        "0.05, 0.99, 90",
        "0.1, 0.9, 22"
    })
    void veryMany(double prevalence, double confidence, int expected) {
        assertThat(Freedom.ofVeryMany(prevalence, confidence, 1)).isEqualTo(expected);
    }

    /** Cochran (1977): 384.16 for a half to within 5 points, and with finite numbers. */
    @ParameterizedTest
    @CsvSource({
        "0, 0.5, 0.05, 385",
        "0, 0.5, 0.1, 97",
        "0, 0.2, 0.05, 246",
        "0, 0.1, 0.05, 139",
        "0, 0.1, 0.1, 35",
        "100, 0.5, 0.05, 80",
        "200, 0.5, 0.05, 132",
        "500, 0.5, 0.05, 218",
        "1000, 0.5, 0.05, 278",
        "2000, 0.5, 0.05, 323"
    })
    void cochran(int population, double expected, double margin, int n) {
        OptionalInt all = population == 0 ? OptionalInt.empty() : OptionalInt.of(population);
        assertThat(new ShareSample(expected, margin, 0.95).sampleSize(all)).isEqualTo(n);
    }

    /** Seeded: what is asked for is reached, one fewer is not, and the approximation is never too few by more than one. */
    @Test
    void sampleSizesKeepTheirPromise() {
        Draws draws = new Draws(5);
        for (int i = 0; i < 400; i++) {
            int population = 2 + (int) (draws.uniform() * 900);
            double prevalence = 0.005 + 0.6 * draws.uniform();
            double confidence = 0.5 + 0.49 * draws.uniform();
            Freedom freedom = new Freedom(population, prevalence, confidence);
            int exact = freedom.exactSampleSize();
            assertThat(exact).isBetween(1, population);
            assertThat(freedom.chanceToSee(exact)).isGreaterThanOrEqualTo(confidence - 1e-8);
            assertThat(freedom.chanceToSee(exact - 1)).isLessThan(confidence);
            assertThat(freedom.sampleSize() - exact).as("%s", freedom).isBetween(-1, 2);
            assertThat(freedom.chanceToSee(population)).isCloseTo(1, within(1e-12));
            assertThat(new Freedom(population + 50, prevalence, confidence).ill())
                    .isGreaterThanOrEqualTo(freedom.ill());
            int sample = new ShareSample(prevalence, 0.07, confidence).sampleSize(OptionalInt.of(population));
            assertThat(sample).isBetween(1, population);
            assertThat(sample)
                    .isLessThanOrEqualTo(new ShareSample(prevalence, 0.07, confidence).sampleSize(OptionalInt.empty()));
        }
    }

    @Test
    void nonsenseIsRefused() {
        assertThatThrownBy(() -> new Freedom(0, 0.1, 0.95)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Freedom(10, 0, 0.95)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Freedom(10, 0.1, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Freedom.ofVeryMany(Double.NaN, 0.95, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new ShareSample(0.5, 0, 0.95)).isInstanceOf(IllegalArgumentException.class);
    }
}
