package org.nestyear.core.hygiene;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.nestyear.core.stats.Draws;

class MixtureTest {
    /**
     * WHO 2014 annex G: 1 in 100 of 5 % is 500 ppm, 1 in 100 of 2.5 % half of that; a university's fact sheet: 1 in 10 of
     * 5.25 % is 5,250 ppm; public health: 1 in 50 of 5 % is 1,000 ppm, a third of a US cup of 5.25 % a gallon a little above
     * 1,000 ppm. The trade's quarter cup (common practice, no source) by hand: 808 ppm at 5.25 %, 1,269 at 8.25 %.
     */
    @ParameterizedTest
    @CsvSource({
        "5, 1, 99, 500, 0.001",
        "2.5, 2, 98, 500, 0.001",
        "5.25, 1, 9, 5250, 0.001",
        "5, 1, 49, 1000, 0.001",
        "5.25, 78.862745, 3785.411784, 1071, 0.5",
        "5.25, 59.147059, 3785.411784, 808, 0.5",
        "8.25, 59.147059, 3785.411784, 1269, 0.5",
        "5.25, 1, 1, 26250, 0.001"
    })
    void publishedAnchors(double label, double bleach, double water, double ppm, double tolerance) {
        assertThat(new Mixture(label, bleach, water).ppm()).isCloseTo(ppm, within(tolerance));
    }

    /** Seeded: a wanted strength comes out again, water only thins, more bleach only strengthens. */
    @Test
    void strengthsBehave() {
        Draws draws = new Draws(8);
        for (int i = 0; i < 2000; i++) {
            double label = 1 + 14 * draws.uniform();
            double water = 10 + 20_000 * draws.uniform();
            double ppm = 1 + (label * 10_000 - 2) * draws.uniform();
            Mixture mixture = Mixture.ofStrength(label, ppm, water);
            assertThat(mixture.ppm()).isCloseTo(ppm, within(1e-7 * ppm));
            assertThat(new Mixture(label, mixture.bleachMl(), water + 1).ppm()).isLessThan(mixture.ppm());
            assertThat(new Mixture(label, mixture.bleachMl() + 1, water).ppm()).isGreaterThan(mixture.ppm());
            assertThat(mixture.ppm()).isLessThanOrEqualTo(mixture.bottlePpm());
        }
    }

    @Test
    void nonsenseIsRefused() {
        assertThatThrownBy(() -> new Mixture(0, 1, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Mixture(5, 0, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Mixture(5, 1, Double.NaN)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Mixture.ofStrength(5, 50_000, 1)).isInstanceOf(IllegalArgumentException.class);
    }
}
