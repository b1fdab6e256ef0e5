package org.nestyear.checks.sums;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import de.siegmar.fastcsv.reader.NamedCsvRecord;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.nestyear.checks.Comparison;
import org.nestyear.checks.SharedData;
import org.nestyear.core.reach.FlightReach;
import org.nestyear.core.source.Parameter;
import org.nestyear.core.source.ParameterTable;
import org.nestyear.core.stats.Draws;
import org.nestyear.data.CatalogueFiles;

/** Flight distances against Greenleaf et al. 2007, Oecologia 153:589, and against measured homing. */
@Tag("reference")
class FlightReachTest {
    private final ParameterTable reach = CatalogueFiles.sums("reach");

    /** The published coefficients (table 1, base-10 logarithms) worked by hand, km. */
    @ParameterizedTest
    @CsvSource({
        "1.0, 0.043, 0.023",
        "1.5, 0.170, 0.085",
        "2.0, 0.447, 0.215",
        "2.4, 0.826, 0.389",
        "2.8, 1.387, 0.641",
        "2.9, 1.561, 0.718",
        "3.36, 2.562, 1.157",
        "4.0, 4.608, 2.036"
    })
    void publishedEquations(double span, double max, double typical) {
        FlightReach flight = FlightReach.of(span, reach);
        assertThat(flight.maxKm()).isCloseTo(max, within(6e-4));
        assertThat(flight.typicalKm()).isCloseTo(typical, within(6e-4));
        // The trap: natural exponents would give six times as much at 2.9 mm.
        assertThat(flight.maxKm()).isLessThan(5);
    }

    /** Homing that was measured lies within the ranges that the catalogue gives about the equations. */
    @Test
    void measuredHomingLiesWithinThePrintedRange() {
        Parameter typical = reach.get("homing_typical_ratio");
        Parameter max = reach.get("homing_max_ratio");
        Comparison halves = new Comparison("measured half-homing over the equation's, ratio", 0.7);
        Comparison tenths = new Comparison("measured tenth-homing over the equation's, ratio", 0.7);
        for (NamedCsvRecord row : SharedData.rows("forage/foraging_distances_megachilidae.csv")) {
            if (!row.getField("measure").equals("homing")
                    || row.getField("itd_mm").isEmpty()) {
                continue;
            }
            FlightReach flight = FlightReach.of(SharedData.number(row, "itd_mm"), reach);
            double measured = SharedData.number(row, "distance_m") / 1000;
            String name = row.getField("species");
            if (row.getField("statistic").startsWith("50%")) {
                halves.add(name, measured / flight.typicalKm(), 1);
                assertThat(measured / flight.typicalKm()).as(name).isBetween(typical.low(), typical.high());
            } else if (row.getField("statistic").contains("10%")) {
                tenths.add(name, measured / flight.maxKm(), 1);
                assertThat(measured / flight.maxKm()).as(name).isBetween(max.low(), max.high());
            }
        }
        halves.check(4);
        tenths.check(3);
    }

    /** Mean flights of females at work (Hofmann et al. 2020) stay within the working distance, for every size watched. */
    @Test
    void meansAtWorkLieWithinTheWorkingDistance() {
        int rows = 0;
        for (NamedCsvRecord row : SharedData.rows("forage/foraging_distances_megachilidae.csv")) {
            if (row.getField("source").startsWith("Hofmann")
                    && row.getField("statistic").startsWith("mean")) {
                double span = SharedData.number(row, "itd_mm");
                assertThat(SharedData.number(row, "distance_m"))
                        .isBetween(
                                reach.get("working_m").low(),
                                FlightReach.of(span, reach).workingM());
                assertThat(span).isBetween(reach.value("working_span_least_mm"), reach.value("working_span_most_mm"));
                rows++;
            }
        }
        assertThat(rows).isGreaterThanOrEqualTo(3);
    }

    /** Seeded: larger bees fly farther, half return from nearer than a tenth, work is never beyond the maximum. */
    @Test
    void reachBehaves() {
        Draws draws = new Draws(2);
        for (int i = 0; i < 300; i++) {
            double span = 0.9 + 6 * draws.uniform();
            FlightReach flight = FlightReach.of(span, reach);
            FlightReach larger = FlightReach.of(span * 1.01, reach);
            assertThat(larger.typicalKm()).isGreaterThan(flight.typicalKm());
            assertThat(larger.maxKm()).isGreaterThan(flight.maxKm());
            assertThat(flight.typicalKm()).isLessThan(flight.maxKm());
            assertThat(flight.workingM()).isPositive().isLessThanOrEqualTo(flight.maxKm() * 1000 + 1e-9);
        }
        assertThatThrownBy(() -> FlightReach.of(0, reach)).isInstanceOf(IllegalArgumentException.class);
    }
}
