package org.nestyear.core.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class SolarRadiationTest {
    /** FAO-56 example 15: Lyon in July, 14.8 and 26.6 °C, Ra 40.6 MJ/m², kRs .16 gives 22.3 MJ/m². */
    @Test
    void agreesWithTheWorkedExample() {
        assertThat(SolarRadiation.fromTemperatureRangeMjM2(14.8, 26.6, 40.6, 0.16))
                .isCloseTo(22.3, within(0.05));
    }

    @Test
    void staysBetweenNothingAndTheLightAboveTheAir() {
        assertThat(SolarRadiation.fromTemperatureRangeMjM2(7, 7, 40, 0.16)).isEqualTo(0);
        assertThat(SolarRadiation.fromTemperatureRangeMjM2(-30, 30, 40, 0.16)).isEqualTo(40);
        assertThat(SolarRadiation.fromTemperatureRangeMjM2(0, 20, 0, 0.16)).isEqualTo(0);
    }

    @Test
    void refusesWhatIsNoDay() {
        assertThatThrownBy(() -> SolarRadiation.fromTemperatureRangeMjM2(9, 8, 40, 0.16))
                .hasMessageContaining("9.0 °C and maximum 8.0 °C");
        assertThatThrownBy(() -> SolarRadiation.fromTemperatureRangeMjM2(Double.NaN, 8, 40, 0.16))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> SolarRadiation.fromTemperatureRangeMjM2(0, Double.POSITIVE_INFINITY, 40, 0.16))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> SolarRadiation.fromTemperatureRangeMjM2(0, 8, -1, 0.16))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> SolarRadiation.fromTemperatureRangeMjM2(0, 8, 40, Double.NaN))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
