package org.nestyear.checks.nesting;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.NavigableMap;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.nestyear.checks.Comparison;
import org.nestyear.core.emergence.EmergenceClock;
import org.nestyear.core.emergence.EmergenceSettings;
import org.nestyear.core.emergence.Storage;
import org.nestyear.core.emergence.ThermalSums;
import org.nestyear.core.flight.FlightDays;
import org.nestyear.core.season.SeasonWeather;
import org.nestyear.core.source.ParameterTable;
import org.nestyear.core.species.Sex;
import org.nestyear.data.CatalogueFiles;

/** Cells at two field sites with oilseed rape in flower, so that food is no limit. */
@Tag("reference")
class FieldCellsTest {
    /** Boxes of one site differ far more than this (7 to 592 cells at a third site of the same trial). */
    private static final double TOLERANCE_PER_CENT = 25;
    /** As in the check of emergence at these sites, days at 4 °C. */
    private static final double READINESS = 160;

    private static final ParameterTable TABLE =
            CatalogueFiles.load().find("Osmia bicornis").orElseThrow().parameters();

    /**
     * Cells in 36 days if all 480 females come out by the model's clock, settle after the pre-nesting days and die at the
     * catalogue's rate. Observed 6358 and 6529 (wild females that joined are in them). The prototype gave 5665 and 6154.
     */
    @ParameterizedTest
    @CsvSource({"NIEFERN, 6358", "TUEBINGEN, 6529"})
    void cellsOf480FemalesThatSettle(FieldSite site, double observed) {
        assertThat(site.cells().lastEntry().getValue()).as("last count").isEqualTo(observed);
        assertThat(site.cells().lastKey()).isEqualTo(FieldSite.DAYS);
        FlightDays flight = site.flight(TABLE);
        SeasonWeather weather = site.weather();
        EmergenceSettings settings = EmergenceSettings.of(TABLE, Sex.FEMALE);
        double[] out = new double[weather.days()];
        double[] times = new EmergenceClock(settings, 51)
                .times(ThermalSums.ofHours(settings, site.hourlyC(weather)), new Storage(0, READINESS, 1, 0, 0));
        for (double time : times) {
            if (Double.isFinite(time)) {
                out[(int) time] += 1.0 / times.length;
            }
        }
        int rest = (int) TABLE.value("prenesting_days");
        double stay = 1 - TABLE.value("death");
        double cells = 0;
        for (int e = 0; e < FieldSite.DAYS; e++) {
            double alive = FieldSite.FEMALES * out[e] * Math.pow(stay, rest);
            for (int d = e + rest; d < FieldSite.DAYS; d++) {
                cells += alive * flight.cells(d);
                alive *= stay;
            }
        }
        System.out.printf(Locale.ROOT, "%s: observed %.0f cells, model %.0f%n", site, observed, cells);
        Comparison share = new Comparison(site + ", cells, % of those observed", TOLERANCE_PER_CENT);
        share.add("36 days", 100 * cells / observed, 100);
        share.check(1);
    }

    /**
     * The same without any assumption on settling and death: females seen nesting at each check, times the cells a female
     * could build until the next, against the cells then built.
     */
    @ParameterizedTest
    @EnumSource(FieldSite.class)
    void cellsOfTheFemalesSeenNesting(FieldSite site) {
        double observed = 0;
        double model = 0;
        for (Interval interval : intervals(site)) {
            observed += interval.built();
            model += interval.females() * interval.potential();
        }
        System.out.printf(Locale.ROOT, "%s: observed %.0f cells, females seen would %.0f%n", site, observed, model);
        Comparison share = new Comparison(site + ", cells of females seen, % of those observed", TOLERANCE_PER_CENT);
        share.add("30 days", 100 * model / observed, 100);
        share.check(1);
    }

    /** Three days between two checks. */
    private record Interval(double females, double built, double potential, double hours) {}

    private static List<Interval> intervals(FieldSite site) {
        FlightDays flight = site.flight(TABLE);
        NavigableMap<Integer, Double> cells = site.cells();
        List<Interval> intervals = new ArrayList<>();
        site.nesting().forEach((day, females) -> {
            double potential = 0;
            double hours = 0;
            for (int d = day; d < day + FieldSite.DAYS_BETWEEN_COUNTS; d++) {
                potential += flight.cells(d);
                hours += flight.flightHours(d);
            }
            double built = cells.getOrDefault(day + FieldSite.DAYS_BETWEEN_COUNTS, Double.NaN)
                    - cells.getOrDefault(day, Double.NaN);
            intervals.add(new Interval(females, built, potential, hours));
        });
        assertThat(intervals).hasSize(10);
        return intervals;
    }

    /**
     * Over the twenty intervals of both sites the cells each female built go with the degree-hours of flight (correlation
     * .74 in the design note, against .27 for flight hours alone). Tolerance .15: that note had other hours and radiation.
     */
    @Test
    void degreeHoursExplainCellsBetterThanHours() {
        List<Interval> all = new ArrayList<>(intervals(FieldSite.NIEFERN));
        all.addAll(intervals(FieldSite.TUEBINGEN));
        double[] each = all.stream().mapToDouble(i -> i.built() / i.females()).toArray();
        double byPotential =
                correlation(each, all.stream().mapToDouble(Interval::potential).toArray());
        double byHours =
                correlation(each, all.stream().mapToDouble(Interval::hours).toArray());
        System.out.printf(
                Locale.ROOT, "cells a female: correlation %.2f with cells, %.2f with hours%n", byPotential, byHours);
        Comparison correlation = new Comparison("correlation of cells a female with the model's", 0.15);
        correlation.add("20 intervals", byPotential, 0.74);
        correlation.check(1);
        assertThat(byHours).isLessThan(byPotential);
    }

    private static double correlation(double[] x, double[] y) {
        double mx = mean(x);
        double my = mean(y);
        double xy = 0;
        double xx = 0;
        double yy = 0;
        for (int i = 0; i < x.length; i++) {
            xy += (x[i] - mx) * (y[i] - my);
            xx += (x[i] - mx) * (x[i] - mx);
            yy += (y[i] - my) * (y[i] - my);
        }
        return xy / Math.sqrt(xx * yy);
    }

    private static double mean(double[] x) {
        double sum = 0;
        for (double value : x) {
            sum += value;
        }
        return sum / x.length;
    }
}
