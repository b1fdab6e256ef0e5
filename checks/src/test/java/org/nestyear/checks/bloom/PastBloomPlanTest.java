package org.nestyear.checks.bloom;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.SortedMap;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.nestyear.checks.Comparison;
import org.nestyear.checks.ReferenceWeather;
import org.nestyear.checks.release.Draft;
import org.nestyear.core.advice.Finding;
import org.nestyear.core.bloom.PastBloom;
import org.nestyear.core.bloom.fit.BloomChoice;
import org.nestyear.core.bloom.fit.BloomKind;
import org.nestyear.core.plan.Plan;
import org.nestyear.core.release.DateRange;
import org.nestyear.core.season.BloomDates;
import org.nestyear.core.weather.GapFilling;
import org.nestyear.core.weather.WeatherRecord;

/**
 * A plan whose bloom is worked out from dates of past years: the Washington cherries of 1970 to 2000 (US National Park
 * Service; weather of NOAA GHCN-Daily USW00013743), asked in the springs after.
 */
@Tag("reference")
class PastBloomPlanTest {
    private static final SortedMap<Integer, LocalDate> PEAKS = ReferenceWeather.cherryPeaks();

    private static Draft draft(int year, int firstYear) {
        Draft draft = Draft.washington();
        draft.keepFrom(LocalDate.of(firstYear - 1, 9, 1));
        draft.today = LocalDate.of(year, 3, 1);
        draft.bloom = new BloomDates.FromPastDates(null);
        draft.pastBloom = List.copyOf(PEAKS.subMap(firstYear, 2001).values());
        return draft;
    }

    private static LocalDate peak(int year) {
        return Objects.requireNonNull(PEAKS.get(year));
    }

    private static Finding finding(Plan plan, String id) {
        return plan.findings().stream()
                .filter(found -> found.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    /**
     * The plan's own model on the weather that came: 4.2 d is the bar that bloom_bars.csv gives for degree-days whose
     * base and start are chosen inside each fold. On 1 March most of that weather is still to come: over these twelve
     * springs the middle of the members is then no better than the mean date of 1970 to 2000 (5.2 against 5.1 d), which is
     * printed and not held against it. What must hold is the outlook's band, of which eight years in ten are expected
     * inside; with twelve years fewer than seven would be a sign of a band too narrow.
     */
    @Test
    void theModelOfThePlanIsWithinTheBarOnYearsItHasNotSeen() {
        WeatherRecord all = GapFilling.fill(ReferenceWeather.washington()).weather();
        double model = 0;
        double middle = 0;
        double mean = 0;
        double meanDay = PEAKS.subMap(1970, 2001).values().stream()
                .mapToInt(LocalDate::getDayOfYear)
                .average()
                .orElseThrow();
        int n = 0;
        int inside = 0;
        for (int year = 2001; year <= 2012; year++) {
            long start = System.nanoTime();
            Plan plan = draft(year, 1970).plan();
            PastBloom past = plan.pastBlooms().get(0);
            assertThat(past.choice().reason()).isEqualTo(BloomChoice.Reason.SMALLEST_ERROR);
            double day = past.choice()
                    .model()
                    .day(BloomRecords.courses(38.847).of(all, year).orElseThrow())
                    .orElseThrow();
            LocalDate observed = peak(year);
            double expected = plan.outlook().targetBloom().middle().getDayOfYear();
            System.out.printf(
                    Locale.ROOT,
                    "%d: observed %s, %s on its weather %s, expected on 1 March %s (%s to %s), %d ms%n",
                    year,
                    observed,
                    past.choice().model(),
                    past.date(day),
                    plan.outlook().targetBloom().middle(),
                    plan.outlook().targetBloom().early(),
                    plan.outlook().targetBloom().late(),
                    Duration.ofNanos(System.nanoTime() - start).toMillis());
            model += Math.pow(day - observed.getDayOfYear(), 2);
            middle += Math.pow(expected - observed.getDayOfYear(), 2);
            DateRange band = plan.outlook().targetBloom();
            inside += observed.isBefore(band.early()) || observed.isAfter(band.late()) ? 0 : 1;
            n++;
            mean += Math.pow(meanDay - observed.getDayOfYear(), 2);
        }
        assertThat(n).isEqualTo(12);
        System.out.printf(
                Locale.ROOT,
                "root mean square: model on the weather that came %.2f d, middle on 1 March %.2f d, mean date %.2f d; %d of"
                        + " %d inside the outlook's band%n",
                Math.sqrt(model / n),
                Math.sqrt(middle / n),
                Math.sqrt(mean / n),
                inside,
                n);
        assertThat(Math.sqrt(model / n)).isLessThanOrEqualTo(4.2);
        assertThat(inside).isGreaterThanOrEqualTo(7);
    }

    /** The band of the outlook is as wide as the error of the chosen model, and the finding tells both errors. */
    @Test
    void theFindingTellsTheModelAndItsRival() {
        Plan plan = draft(2005, 1986).plan();
        PastBloom past = plan.pastBlooms().get(0);
        Finding told = finding(plan, "bloom-from-past-dates");
        assertThat(past.choice().dates()).isEqualTo(15);
        assertThat(past.unused()).isEmpty();
        assertThat(past.notRun()).isEmpty();
        assertThat(past.choice().scores()).hasSize(BloomKind.values().length);
        assertThat(told.basis()).anyMatch(row -> row.id().equals("fit_least_years"));
        assertThat(plan.basis()).anyMatch(row -> row.id().equals("fit_least_portions"));
        assertThat(told.what().pattern()).contains("follows");
    }

    /** Dates before the weather begins are told and left out; two of them alone are too few, and the sum is the general one. */
    @Test
    void datesWithoutWeatherAreNotUsed() {
        Draft draft = draft(2005, 1990);
        draft.pastBloom = List.of(peak(1972), peak(1999), peak(2000));
        Plan plan = draft.plan();
        PastBloom past = plan.pastBlooms().get(0);
        assertThat(past.unused()).containsExactly(peak(1972));
        assertThat(past.choice().dates()).isEqualTo(2);
        assertThat(past.choice().reason()).isEqualTo(BloomChoice.Reason.TOO_FEW_DATES);
        assertThat(past.choice().errorDays()).isCloseTo(7, within(1e-9));
    }

    /** Washington's days mirrored about their mean: no model of warmth can follow, so no weather may move the bloom. */
    @Test
    void whereTheMeanDateWinsTheWeatherDoesNotMoveTheBloom() {
        Draft draft = draft(2005, 1970);
        List<LocalDate> mirrored = new ArrayList<>();
        PEAKS.subMap(1970, 1985)
                .forEach((year, peak) -> mirrored.add(LocalDate.ofYearDay(year, 2 * 93 - peak.getDayOfYear())));
        draft.pastBloom = mirrored;
        Plan plan = draft.plan();
        PastBloom past = plan.pastBlooms().get(0);
        assertThat(past.choice().reason()).isEqualTo(BloomChoice.Reason.NONE_BEATS_THE_MEAN_DATE);
        assertThat(finding(plan, "bloom-from-past-dates").what().pattern()).contains("whatever the weather");
        Comparison middle = new Comparison("middle of bloom where the mean date is used, day of the year", 1);
        middle.add(
                "mirrored dates",
                plan.outlook().targetBloom().middle().getDayOfYear(),
                mirrored.stream().mapToInt(LocalDate::getDayOfYear).average().orElseThrow());
        middle.check(1);
    }

    /** This season's own date stays what it is; past dates only change how it moves. */
    @Test
    void theDateOfThisSeasonWins() {
        Draft own = draft(2005, 1986);
        own.bloom = new BloomDates.Dated(LocalDate.of(2005, 4, 20), LocalDate.of(2005, 5, 4));
        Plan plan = own.plan();
        LocalDate middle = plan.outlook().targetBloom().middle();
        assertThat(middle).isBetween(LocalDate.of(2005, 4, 26), LocalDate.of(2005, 4, 28));
        assertThat(finding(plan, "bloom-told-ahead").what().arguments()).contains("cherry");
        assertThat(finding(plan, "bloom-from-past-dates").what().pattern()).contains("stands");
    }
}
