package org.nestyear.core.count;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
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

    /**
     * Where an ill one may be missed: N/S · (1 − (1 − C)^(1/D)), with the outputs printed in the manual of a package for animal
     * health surveys (80 in all, 2, 5 and 10 ill, sensitivity 0.8 → 78, 46, 26; 100 in all, 1 ill, 0.95 → 100).
     */
    @ParameterizedTest
    @CsvSource({"80, 0.025, 0.8, 78", "80, 0.0625, 0.8, 46", "80, 0.125, 0.8, 26", "100, 0.01, 0.95, 100"})
    void imperfectDetection(int population, double prevalence, double sensitivity, int expected) {
        assertThat(new Freedom(population, prevalence, 0.95, sensitivity).sampleSize())
                .isEqualTo(expected);
    }

    /**
     * One ill one among 100, 50 looked at, told with 0.92: exactly half of 0.92 (0.46 in that manual). One of 80 told with 0.8 is
     * never told with 95 % confidence, as there. Very many: ln(1 − C)/ln(1 − p·S), here ln 0.05 / ln 0.96.
     */
    @Test
    void imperfectDetectionByExactOdds() {
        assertThat(new Freedom(100, 0.01, 0.95, 0.92).chanceToSee(50)).isEqualTo(0.46, within(1e-9));
        assertThat(new Freedom(80, 0.0125, 0.95, 0.8).isReachable()).isFalse();
        assertThat(new Freedom(80, 0.0125, 0.95, 0.8).exactSampleSize()).isEqualTo(80);
        assertThat(new Freedom(80, 0.0125, 0.95, 0.8).chanceToSee(80)).isEqualTo(0.8, within(1e-9));
        assertThat(Freedom.ofVeryMany(0.05, 0.95, 0.8)).isEqualTo(74);
    }

    /** Exact odds by drawing one by one, for any sensitivity: the chance missed is the mean of (1 − S)^k. */
    @Test
    void sensitivityNeverHelps() {
        Draws draws = new Draws(17);
        for (int run = 0; run < 100; run++) {
            int population = 20 + (int) (draws.uniform() * 300);
            double prevalence = 0.02 + 0.3 * draws.uniform();
            double sensitivity = 0.3 + 0.69 * draws.uniform();
            Freedom sure = new Freedom(population, prevalence, 0.9);
            Freedom unsure = new Freedom(population, prevalence, 0.9, sensitivity);
            assertThat(unsure.exactSampleSize()).isGreaterThanOrEqualTo(sure.exactSampleSize());
            int looked = 1 + (int) (draws.uniform() * (population - 1));
            assertThat(unsure.chanceToSee(looked)).isLessThanOrEqualTo(sure.chanceToSee(looked) + 1e-12);
            assertThat(unsure.chanceToSee(looked)).isEqualTo(oneByOne(unsure, looked), within(1e-9));
            if (unsure.isReachable()) {
                int exact = unsure.exactSampleSize();
                assertThat(unsure.chanceToSee(exact)).isGreaterThanOrEqualTo(0.9 - 1e-9);
                assertThat(unsure.chanceToSee(exact - 1)).isLessThan(0.9);
                assertThat(unsure.sampleSize()).isGreaterThanOrEqualTo(exact);
            }
        }
    }

    /** Chance missed by the number of ill ones still in the lot, drawn one after the other. */
    private static double oneByOne(Freedom freedom, int looked) {
        double[] missed = new double[freedom.ill() + 1];
        missed[freedom.ill()] = 1;
        for (int drawn = 0; drawn < looked; drawn++) {
            double[] next = new double[missed.length];
            for (int ill = 0; ill < missed.length; ill++) {
                double share = Math.min(1, ill / (double) (freedom.population() - drawn));
                next[ill] += missed[ill] * (1 - share);
                if (ill > 0) {
                    next[ill - 1] += missed[ill] * share * (1 - freedom.sensitivity());
                }
            }
            missed = next;
        }
        return 1 - Arrays.stream(missed).sum();
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
        assertThatThrownBy(() -> new Freedom(10, 0.1, 0.9, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Freedom(10, 0.1, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Freedom.ofVeryMany(Double.NaN, 0.95, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new ShareSample(0.5, 0, 0.95)).isInstanceOf(IllegalArgumentException.class);
    }
}
