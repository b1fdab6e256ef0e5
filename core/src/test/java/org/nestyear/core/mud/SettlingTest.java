package org.nestyear.core.mud;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.nestyear.core.stats.Draws;

class SettlingTest {
    /** Water at 20 °C: 1.0016 mPa·s (CRC handbook, from memory); the formula is within half a per cent of it. */
    @Test
    void viscosityOfWater() {
        assertThat(new Settling(100, 20).viscosity()).isCloseTo(1.0016e-3, within(5e-6));
        // 0.8900 mPa·s at 25 °C (same handbook, from memory).
        assertThat(new Settling(100, 25).viscosity()).isCloseTo(0.890e-3, within(5e-6));
    }

    /** Stokes by hand for 100 and 150 mm: 50 µm 44.5 s and 66.8 s, 20 µm 4.64 min, 2 µm 7.73 h and 11.6 h at 20 °C. */
    @ParameterizedTest
    @CsvSource({
        "100, 20, 0.05, 0.742, 0.001",
        "150, 20, 0.05, 1.113, 0.001",
        "100, 20, 0.02, 4.64, 0.005",
        "150, 20, 0.02, 6.96, 0.005",
        "100, 20, 0.002, 463.8, 0.5",
        "150, 20, 0.002, 696, 1",
        "100, 15, 0.05, 0.842, 0.002",
        "100, 15, 0.002, 526, 1",
        "100, 25, 0.05, 0.660, 0.002",
        "100, 25, 0.002, 412, 1"
    })
    void settlingTimes(double height, double water, double grain, double minutes, double tolerance) {
        assertThat(new Settling(height, water).minutes(grain)).isCloseTo(minutes, within(tolerance));
    }

    /** A laboratory's hydrometer reads sand at 40 s (University of Minnesota): within a tenth over 10 cm at 25 °C. */
    @Test
    void theLaboratorysFortySeconds() {
        assertThat(new Settling(100, 25).minutes(Settling.SAND_LEAST_MM) * 60).isCloseTo(40, within(4.0));
    }

    /** After 1 min, 2 h, 24 h and 48 h all above 43.1, 3.93, 1.14 and 0.80 µm is down over 10 cm at 20 °C, by hand. */
    @ParameterizedTest
    @CsvSource({"1, 43.1, 0.05", "120, 3.93, 0.005", "1440, 1.14, 0.01", "2880, 0.80, 0.01"})
    void whatHasSettledByThen(double minutes, double micrometres, double tolerance) {
        assertThat(new Settling(100, 20).diameterMm(minutes) * 1000).isCloseTo(micrometres, within(tolerance));
    }

    /** Seeded: time goes with height, against the square of the grain; warm water is quicker; both ways agree. */
    @Test
    void settlingBehaves() {
        Draws draws = new Draws(3);
        for (int i = 0; i < 300; i++) {
            double height = 10 + 500 * draws.uniform();
            double water = 1 + 38 * draws.uniform();
            double grain = 0.001 + 0.08 * draws.uniform();
            Settling settling = new Settling(height, water);
            double minutes = settling.minutes(grain);
            assertThat(settling.diameterMm(minutes)).isCloseTo(grain, within(1e-12));
            assertThat(new Settling(2 * height, water).minutes(grain)).isCloseTo(2 * minutes, within(1e-9 * minutes));
            assertThat(settling.minutes(2 * grain)).isCloseTo(minutes / 4, within(1e-9 * minutes));
            assertThat(new Settling(height, water + 1).minutes(grain)).isLessThan(minutes);
        }
    }

    @Test
    void nonsenseIsRefused() {
        assertThatThrownBy(() -> new Settling(0, 20)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Settling(100, 90)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Settling(Double.NaN, 20)).isInstanceOf(IllegalArgumentException.class);
    }
}
