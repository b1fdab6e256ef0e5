package org.nestyear.checks.winter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.nestyear.checks.Comparison;
import org.nestyear.core.source.ParameterTable;
import org.nestyear.core.stats.Draws;
import org.nestyear.core.weather.Humidity;
import org.nestyear.core.winter.BodyFat;
import org.nestyear.core.winter.PreWinter;
import org.nestyear.data.CatalogueFiles;

/** Weight, warmth before winter, and water in the air. */
@Tag("reference")
class StoreTest {
    private static ParameterTable bees(String latin) {
        return CatalogueFiles.load().find(latin).orElseThrow().parameters();
    }

    /**
     * Weight lost a day at three temperatures, with the standard deviation among 118 to 128 bees: weekly weighings of
     * Möllmann et al. 2025, weeks 0 to 8 (our computation). The line must pass within six tenths of that deviation.
     */
    @ParameterizedTest
    @CsvSource({
        "Osmia bicornis, 3.6, 0.040, 0.013",
        "Osmia bicornis, 7.2, 0.051, 0.010",
        "Osmia bicornis, 11.1, 0.091, 0.018",
        "Osmia cornuta, 3.6, 0.037, 0.015",
        "Osmia cornuta, 7.2, 0.048, 0.017",
        "Osmia cornuta, 11.1, 0.089, 0.024",
    })
    void weightIsLostAsWeighed(String latin, double celsius, double percent, double deviation) {
        double ours = BodyFat.of(bees(latin)).percentPerDay(celsius);
        assertThat(ours).isBetween(percent - 0.6 * deviation, percent + 0.6 * deviation);
    }

    /** Winter deaths 0.05 × degree-days − 4.63 %: none below 93 (Sgolastra et al. 2011, as used by a later study). */
    @ParameterizedTest
    @CsvSource({"0, 0", "92.6, 0", "93, 0.02", "200, 5.37", "300, 10.37", "5000, 100"})
    void deathsRiseWithWarmthBeforeWinter(double degreeDays, double percent) {
        Comparison deaths = new Comparison("winter deaths, %", 1e-9);
        deaths.add(degreeDays + " °C·d", PreWinter.of(bees("Osmia lignaria")).deathPercent(degreeDays), percent);
        deaths.check(1);
    }

    /** FAO-56 example 3 (es 1.705 and 3.075 kPa) and equation 11 worked out at other temperatures. */
    @ParameterizedTest
    @CsvSource({"15, 1.705", "24.5, 3.075", "0, 0.6108", "4, 0.8133", "20, 2.3383", "-1.1, 0.5632"})
    void saturation(double celsius, double kPa) {
        Comparison table = new Comparison("saturation vapour pressure, kPa", 6e-4);
        table.add(celsius + " °C", Humidity.saturationKPa(celsius), kPa);
        table.check(1);
    }

    /** Dew points by the inverse of equation 11: 4 °C at 60 and 70 %, 10 °C at 60 %, 20 °C at 50 %. */
    @ParameterizedTest
    @CsvSource({"4, 60, -3.05", "4, 70, -0.96", "10, 60, 2.60", "20, 60, 12.00"})
    void dewPoint(double celsius, double percent, double dewC) {
        Comparison table = new Comparison("dew point, °C", 6e-3);
        table.add(celsius + " °C " + percent + " %", Humidity.dewPointC(celsius, percent), dewC);
        table.check(1);
    }

    /** Property, seeded: warmer costs more, a run costs the sum of its hours, saturated air is at its dew point. */
    @Test
    void properties() {
        Draws draws = new Draws(5);
        BodyFat fat = BodyFat.of(bees("Osmia cornifrons"));
        for (int i = 0; i < 500; i++) {
            double celsius = -5 + 20 * draws.uniform();
            assertThat(fat.percentPerDay(celsius + 0.1)).isGreaterThan(fat.percentPerDay(celsius));
            double[] day = new double[24];
            Arrays.fill(day, celsius);
            assertThat(fat.percentOver(day)).isCloseTo(fat.percentPerDay(celsius), within(1e-12));
            assertThat(Humidity.dewPointC(celsius, 100)).isCloseTo(celsius, within(1e-9));
            assertThat(Humidity.deficitKPa(celsius, 100)).isZero();
        }
    }
}
