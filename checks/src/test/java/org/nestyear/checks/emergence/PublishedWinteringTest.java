package org.nestyear.checks.emergence;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Locale;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.nestyear.core.emergence.EmergenceSettings;
import org.nestyear.core.emergence.Storage;
import org.nestyear.core.emergence.ThermalSums;
import org.nestyear.core.species.Sex;

/** Cocoons wintered at one temperature and then warmed, in published trials. */
@Tag("reference")
class PublishedWinteringTest {
    /** Days of warmth within which every bee of the grid comes out. */
    private static final int WARM_DAYS = 60;

    private static double[] times(String species, Sex sex, double days, double coldC, double warmC) {
        EmergenceSettings settings = Clocks.settings(species, sex);
        ThermalSums sums = ThermalSums.constant(settings, warmC, WARM_DAYS);
        return Clocks.times(settings, sums, Storage.cold(settings, coldC, days, 0));
    }

    /**
     * Cases C01 to C05 of the reference data: males of O. lignaria at 20 °C come out within 5 d on average after 150 d at
     * 0, 4 or 7 °C and after 210 or 270 d at 0 or 4 °C (Bosch &amp; Kemp 2003, Environ. Entomol. 32:711, abstract). An
     * upper bound, so no tolerance.
     */
    @ParameterizedTest
    @CsvSource({"150, 0", "150, 4", "150, 7", "210, 0", "210, 4", "270, 0", "270, 4"})
    void blueOrchardMalesComeOutWithinFiveDays(double days, double coldC) {
        double[] times = times("Osmia lignaria", Sex.MALE, days, coldC, 20);
        assertThat(Clocks.shareInStore(times)).isZero();
        assertThat(Clocks.shareNotYet(times)).isZero();
        double mean = Arrays.stream(Clocks.out(times)).average().orElseThrow();
        System.out.printf(
                Locale.ROOT, "O. lignaria males, %.0f d at %.0f °C, then 20 °C: mean %.1f d%n", days, coldC, mean);
        assertThat(mean).isBetween(0.0, 5.0);
    }

    /**
     * Case C14: O. lignaria comes out within 1 to 7 days at 72 to 78 °F after 180 d or more at 45 °F or less (PNW Insect
     * Management Handbook, page on chalkbrood of the blue orchard bee). A bee out within the first day is found on day 1.
     * Nine in ten must do so, since a handbook's range is not of the last bee.
     */
    @ParameterizedTest
    @CsvSource({
        "0, 22.2, FEMALE",
        "0, 25.6, FEMALE",
        "4, 22.2, FEMALE",
        "7.2, 25.6, FEMALE",
        "0, 22.2, MALE",
        "0, 25.6, MALE",
        "4, 22.2, MALE",
        "7.2, 25.6, MALE"
    })
    void blueOrchardBeesComeOutWithinAWeek(double coldC, double warmC, Sex sex) {
        double[] times = times("Osmia lignaria", sex, 180, coldC, warmC);
        double within = Arrays.stream(times).filter(t -> t >= 0 && t < 7).count() / (double) times.length;
        System.out.printf(
                Locale.ROOT,
                "O. lignaria %s, 180 d at %.1f °C, then %.1f °C: %.0f %% within days 1 to 7%n",
                sex,
                coldC,
                warmC,
                100 * within);
        assertThat(within).isGreaterThanOrEqualTo(0.9);
    }

    /**
     * Warmer and longer wintering makes males come out sooner (Bosch &amp; Kemp 2003, abstract: time to emergence falls
     * with both). Never later, and sooner where readiness is still lacking.
     */
    @ParameterizedTest
    @EnumSource(Sex.class)
    void warmerAndLongerWinteringNeverSlows(Sex sex) {
        double shortest = mean(times("Osmia lignaria", sex, 90, 0, 20));
        double longer = mean(times("Osmia lignaria", sex, 150, 0, 20));
        double warmer = mean(times("Osmia lignaria", sex, 90, 4, 20));
        double both = mean(times("Osmia lignaria", sex, 150, 4, 20));
        assertThat(longer).isLessThan(shortest);
        assertThat(warmer).isLessThan(shortest);
        assertThat(both).isLessThanOrEqualTo(Math.min(longer, warmer));
    }

    private static double mean(double[] times) {
        return Arrays.stream(Clocks.out(times)).average().orElseThrow();
    }

    /**
     * No bee leaves its cocoon in a store at 0 to 4 °C, however long: stock is kept there for 270 d with success (Bosch
     * &amp; Kemp 2003, abstract).
     */
    @ParameterizedTest
    @ValueSource(strings = {"Osmia lignaria", "Osmia bicornis", "Osmia cornuta", "Osmia cornifrons"})
    void noneComesOutInAColdStore(String species) {
        for (Sex sex : Sex.values()) {
            for (double celsius = 0; celsius <= 4; celsius++) {
                double[] times = times(species, sex, 270, celsius, 20);
                assertThat(Clocks.shareInStore(times))
                        .as(species + " " + sex + " at " + celsius)
                        .isZero();
                assertThat(Clocks.shareNotYet(times)).isZero();
            }
        }
    }

    /**
     * At 7 °C bees of O. cornuta leave in the store, and those of O. lignaria and O. bicornis do not: the first are the
     * earliest bees of all (out in the warm winter of the three-winters data by 4 February at a mean of 11 °C), the gate
     * of the others lies above 10 °C. Bosch &amp; Kemp 2003 found O. lignaria out before warming only in their warmest and
     * longest treatments, which went up to 13 °C.
     */
    @ParameterizedTest
    @EnumSource(Sex.class)
    void onlyTheEarliestBeeMayLeaveAtSevenDegrees(Sex sex) {
        assertThat(Clocks.shareInStore(times("Osmia cornuta", sex, 150, 7, 20))).isGreaterThan(0);
        assertThat(Clocks.shareInStore(times("Osmia lignaria", sex, 150, 7, 20)))
                .isZero();
        assertThat(Clocks.shareInStore(times("Osmia bicornis", sex, 150, 7, 20)))
                .isZero();
        assertThat(Clocks.shareInStore(times("Osmia lignaria", sex, 270, 13, 20)))
                .isGreaterThan(0.5);
    }
}
