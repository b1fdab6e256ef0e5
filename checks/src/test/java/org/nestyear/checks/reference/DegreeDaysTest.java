package org.nestyear.checks.reference;

import static org.assertj.core.api.Assertions.assertThat;

import de.siegmar.fastcsv.reader.NamedCsvRecord;
import org.junit.jupiter.api.Test;
import org.nestyear.checks.Comparison;
import org.nestyear.checks.SharedData;
import org.nestyear.core.stats.Draws;
import org.nestyear.core.weather.DegreeDays;

/** Degree-days against the closed form of Baskerville and Emin 1969, itself checked by quadrature in that file. */
class DegreeDaysTest {
    /** single_sine.csv: 21 days × 10 pairs of base and cap. */
    @Test
    void oneSineWithAndWithoutACap() {
        Comparison sine = new Comparison("degree-days of a sine, °C·d", 1e-9);
        Comparison capped = new Comparison("degree-days of a sine under a cap, °C·d", 1e-9);
        Comparison mean = new Comparison("degree-days of the mean, °C·d", 1e-9);
        for (NamedCsvRecord row : SharedData.rows("reference/degree-days/single_sine.csv")) {
            double min = SharedData.number(row, "tmin_c");
            double max = SharedData.number(row, "tmax_c");
            double base = SharedData.number(row, "lower_c");
            String name = min + " to " + max + " above " + base;
            if (row.getField("upper_c").isEmpty()) {
                sine.add(name, DegreeDays.sine(min, max, base), SharedData.number(row, "single_sine_dd_closed"));
                mean.add(name, DegreeDays.ofMean(min, max, base), SharedData.number(row, "simple_average_dd"));
            } else {
                double cap = SharedData.number(row, "upper_c");
                capped.add(
                        name + " up to " + cap,
                        DegreeDays.sine(min, max, base, cap),
                        SharedData.number(row, "horizontal_cutoff_closed"));
            }
        }
        sine.check(105);
        mean.check(105);
        capped.check(105);
    }

    /** Property: never below the mean's sum, never negative, and growing with warmth; seeded draws. */
    @Test
    void aSineNeverGivesLessThanTheMean() {
        Draws draws = new Draws(11);
        for (int i = 0; i < 2000; i++) {
            double min = -20 + 40 * draws.uniform();
            double max = min + 25 * draws.uniform();
            double base = -10 + 30 * draws.uniform();
            double sum = DegreeDays.sine(min, max, base);
            assertThat(sum).isGreaterThanOrEqualTo(DegreeDays.ofMean(min, max, base) - 1e-12);
            assertThat(DegreeDays.sine(min, max + 1, base)).isGreaterThanOrEqualTo(sum);
            assertThat(DegreeDays.sine(min, max, base, base + 5)).isBetween(0.0, 5.0 + 1e-12);
        }
    }
}
