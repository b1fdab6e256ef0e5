package org.nestyear.checks.emergence;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Locale;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.nestyear.checks.Comparison;
import org.nestyear.checks.ReferenceWeather;
import org.nestyear.core.emergence.EmergenceSettings;
import org.nestyear.core.emergence.Storage;
import org.nestyear.core.emergence.ThermalSums;
import org.nestyear.core.species.Sex;
import org.nestyear.core.stats.Quantiles;
import org.nestyear.core.weather.WeatherRecord;

/** How long after release half the bees are out, over 42 springs at Washington. */
@Tag("regression")
class DaysToHalfOutTest {
    private static final double LATITUDE = 38.847;
    private static final int FIRST_YEAR = 1971;
    private static final int LAST_YEAR = 2012;
    private static final int[] RELEASE_DAY = {46, 60, 74, 91, 105, 121};
    private static final double[] FEMALES = {26, 18, 13, 7.0, 4.3, 2.0};
    private static final double[] MALES = {13, 8.6, 5.4, 2.0, 1.3, 0.4};
    /** Readiness on the first of these days, days at 4 °C, as at the field sites; a day in the cold adds one. */
    private static final double READINESS = 160;

    /**
     * The figures are the prototype's (design note, "Further checks"), not observations, so they guard against drift and
     * prove nothing. It did not say which bees they are of; they come out for O. bicornis with a readiness of 160 on day
     * 46, whole days counted, to .6 d. O. lignaria has the same gate, borrowed, and once well wintered the same days. A
     * female kept less cold needs longer in February: 35 d from day 46 after 138 d at 3 °C. Tolerance 1 d: the figures
     * come from another hourly curve.
     */
    @ParameterizedTest
    @CsvSource({"Osmia bicornis, FEMALE", "Osmia bicornis, MALE", "Osmia lignaria, FEMALE", "Osmia lignaria, MALE"})
    void daysFromReleaseToHalfOut(String species, Sex sex) {
        WeatherRecord weather = ReferenceWeather.washington();
        EmergenceSettings settings = Clocks.settings(species, sex);
        ThermalSums sums = Clocks.outdoors(settings, weather, LATITUDE);
        double[] expected = sex == Sex.FEMALE ? FEMALES : MALES;
        Comparison days = new Comparison(species + " " + sex + ", days from release to half out", 1);
        double last = Double.POSITIVE_INFINITY;
        for (int i = 0; i < RELEASE_DAY.length; i++) {
            double sum = 0;
            for (int year = FIRST_YEAR; year <= LAST_YEAR; year++) {
                int release = (int) (LocalDate.ofYearDay(year, RELEASE_DAY[i]).toEpochDay()
                        - weather.first().toEpochDay());
                double readiness = READINESS + RELEASE_DAY[i] - RELEASE_DAY[0];
                double[] out = Clocks.out(Clocks.times(settings, sums, new Storage(release, readiness, 1, 0, release)));
                sum += Math.floor(Quantiles.of(out, 0.5)) - release;
            }
            double mean = sum / (LAST_YEAR - FIRST_YEAR + 1);
            System.out.printf(
                    Locale.ROOT,
                    "%s %s released on day %d: half out after %.1f d, prototype %.1f d%n",
                    species,
                    sex,
                    RELEASE_DAY[i],
                    mean,
                    expected[i]);
            days.add("day " + RELEASE_DAY[i], mean, expected[i]);
            assertThat(mean).as("later release, quicker out").isLessThan(last);
            last = mean;
        }
        days.check(RELEASE_DAY.length);
    }
}
