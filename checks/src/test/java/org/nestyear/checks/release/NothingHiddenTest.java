package org.nestyear.checks.release;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.nestyear.core.advice.Finding;
import org.nestyear.core.advice.Quantity;
import org.nestyear.core.plan.Plan;
import org.nestyear.core.release.CurvePoint;
import org.nestyear.core.release.ReleaseWindow;
import org.nestyear.core.season.Goal;
import org.nestyear.core.weather.DailyWeather;
import org.nestyear.core.weather.WeatherRecord;

/** What a plan may and may not know, and how sure it may sound. */
@Tag("regression")
class NothingHiddenTest {
    private static final int YEARS = 15;

    @Test
    void sameInputsGiveTheSamePlan() {
        assertThat(Draft.washington(YEARS).plan()).isEqualTo(again(Draft.washington(YEARS)));
        assertThat(Draft.washington(3).plan()).isEqualTo(again(Draft.washington(3)));
    }

    private static Plan again(Draft draft) {
        return draft.plan();
    }

    /** The weather after the day of asking is changed beyond recognition, or cut off: the plan must be the same. */
    @Test
    void weatherAfterTodayIsNeverRead() {
        LocalDate today = LocalDate.of(2005, 3, 10);
        Draft told = Draft.washington();
        told.keepFrom(LocalDate.of(1995, 1, 1));
        told.today = today;
        Plan plan = told.plan();
        Draft other = Draft.washington();
        other.keepFrom(LocalDate.of(1995, 1, 1));
        other.today = today;
        other.eachDay(day -> day.date().isAfter(today)
                ? new DailyWeather(day.date(), day.minC() + 9, day.maxC() + 15, 40, 3, 20)
                : day);
        assertThat(other.plan()).isEqualTo(plan);
        Draft cut = Draft.washington();
        cut.keepFrom(LocalDate.of(1995, 1, 1));
        cut.today = today;
        cut.weather = cut.weather.upTo(today).orElseThrow();
        assertThat(cut.plan()).isEqualTo(plan);
        // That the comparison can fail: a change of the weather before today does change the plan.
        Draft before = Draft.washington();
        before.keepFrom(LocalDate.of(1995, 1, 1));
        before.today = today;
        before.eachDay(day -> day.date().isAfter(today)
                ? day
                : new DailyWeather(day.date(), day.minC() + 1, day.maxC() + 1, Double.NaN, Double.NaN, Double.NaN));
        assertThat(before.plan()).isNotEqualTo(plan);
    }

    /**
     * Two unlike springs planned for as two, and planned for as twice their mean: a year is never replaced by a mean, so
     * the curves must differ, since flight and emergence bend with temperature.
     */
    @Test
    void yearsAreNeverAveraged() {
        Plan two = twoYears(1990, 1996, false).plan();
        Plan mean = twoYears(1990, 1996, true).plan();
        assertThat(two.realYears()).isEqualTo(2);
        assertThat(mean.realYears()).isEqualTo(2);
        assertThat(two.outlook().halfFemales()).isNotEqualTo(mean.outlook().halfFemales());
        double apart = 0;
        for (int i = 0;
                i
                        < Math.min(
                                two.release().curve().size(),
                                mean.release().curve().size());
                i++) {
            CurvePoint a = two.release().curve().get(i);
            CurvePoint b = mean.release().curve().get(i);
            apart = Math.max(apart, Math.abs(a.daughters() - b.daughters()) / Math.max(a.daughters(), b.daughters()));
        }
        System.out.printf(Locale.ROOT, "two years against their mean: %.0f %% of brood apart%n", 100 * apart);
        assertThat(apart).isGreaterThan(0.05);
    }

    /** Only the years 2011 and 2012 of a record made of two chosen years, or of the mean of both. */
    private static Draft twoYears(int first, int second, boolean averaged) {
        Draft draft = Draft.washington();
        WeatherRecord all = draft.weather;
        List<DailyWeather> days = new ArrayList<>();
        for (int year = 2011; year <= 2012; year++) {
            for (LocalDate d = LocalDate.of(year, 1, 1); d.getYear() == year; d = d.plusDays(1)) {
                DailyWeather a = all.find(d.withYear(first)).orElseThrow();
                DailyWeather b = all.find(d.withYear(second)).orElseThrow();
                DailyWeather own = year == 2011 ? a : b;
                double min = averaged ? (a.minC() + b.minC()) / 2 : own.minC();
                double max = averaged ? (a.maxC() + b.maxC()) / 2 : own.maxC();
                days.add(new DailyWeather(d, min, max, 0, Double.NaN, Double.NaN));
            }
        }
        draft.weather = new WeatherRecord(days);
        return draft;
    }

    private static long days(ReleaseWindow window) {
        return window.to().toEpochDay() - window.from().toEpochDay() + 1;
    }

    /**
     * Three years know less than twenty of the same station: what is not ruled out must not be narrower, whichever three
     * they are; and however the years agree, a window is never a single day.
     */
    @Test
    void fewYearsGiveNoNarrowerWindow() {
        for (Goal goal : List.of(Goal.BOTH, Goal.BROOD)) {
            Draft many = Draft.washington(20);
            many.goal = goal;
            Plan twenty = many.plan();
            for (int last = 1994; last <= 2012; last += 9) {
                Draft few = Draft.washington();
                few.goal = goal;
                LocalDate first = LocalDate.of(last - 2, 1, 1);
                few.today = LocalDate.of(last + 1, 2, 1);
                few.keepFrom(first);
                few.weather = few.weather.upTo(LocalDate.of(last, 12, 31)).orElseThrow();
                Plan three = few.plan();
                System.out.println(
                        goal + ", 20 years: " + days(twenty.release().notRuledOut()) + " d not ruled out; 3 to " + last
                                + ": " + days(three.release().notRuledOut()) + " d");
                assertThat(three.realYears()).isEqualTo(3);
                assertThat(days(three.release().notRuledOut()))
                        .isGreaterThanOrEqualTo(days(twenty.release().notRuledOut()));
                assertThat(days(three.release().window())).isGreaterThanOrEqualTo(5);
                assertThat(Objects.requireNonNull(finding(three, "few-years").observed())
                                .arguments())
                        .contains(Quantity.count(3));
            }
            assertThat(twenty.findings()).noneMatch(f -> f.id().equals("few-years"));
        }
    }

    /** One year tells nothing of how years differ: it rules nothing out, and still names a window to act on. */
    @Test
    void oneYearRulesNothingOut() {
        Plan plan = Draft.washington(1).plan();
        List<CurvePoint> curve = plan.release().curve();
        assertThat(plan.realYears()).isEqualTo(1);
        assertThat(plan.release().notRuledOut().from()).isEqualTo(curve.get(0).date());
        assertThat(plan.release().notRuledOut().to())
                .isEqualTo(curve.get(curve.size() - 1).date());
        assertThat(days(plan.release().window())).isBetween(5L, curve.size() - 1L);
    }

    private static Finding finding(Plan plan, String id) {
        return plan.findings().stream()
                .filter(f -> f.id().equals(id))
                .findFirst()
                .orElseThrow();
    }
}
