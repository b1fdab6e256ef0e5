package org.nestyear.checks.leafcutter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.nestyear.core.leafcutter.Holding;
import org.nestyear.core.leafcutter.Milestone;
import org.nestyear.core.leafcutter.Span;
import org.nestyear.core.leafcutter.Stage;
import org.nestyear.core.leafcutter.TwoSums;
import org.nestyear.core.leafcutter.Warming;
import org.nestyear.core.leafcutter.YearsOfDates;

/** What must hold of any warming, on seeded random courses of hours. */
@Tag("regression")
class WarmthPropertiesTest {
    private static final int RUNS = 200;

    private static Span span(Milestone milestone, Warming warming, TwoSums had) {
        return Leafcutters.CLOCK.span(milestone, warming, had);
    }

    private static double[] hours(SplittableRandom random) {
        double[] hours = new double[24 * (20 + random.nextInt(60))];
        double mean = 14 + 16 * random.nextDouble();
        for (int h = 0; h < hours.length; h++) {
            hours[h] = mean + 8 * Math.sin(Math.PI * h / 12) + 4 * random.nextDouble();
        }
        return hours;
    }

    @Test
    void milestonesComeInTheirOrder() {
        SplittableRandom random = new SplittableRandom(29_4);
        int sure = 0;
        for (int run = 0; run < RUNS; run++) {
            Warming warming = Warming.hours(hours(random));
            Span last = new Span(0, 0);
            for (Milestone milestone : Milestone.values()) {
                Span span = span(milestone, warming, TwoSums.NONE);
                assertThat(span.earlyDays()).isGreaterThanOrEqualTo(last.earlyDays());
                assertThat(span.lateDays()).isGreaterThanOrEqualTo(last.lateDays());
                sure += span.isSure() ? 1 : 0;
                last = span;
            }
        }
        assertThat(sure).isBetween(RUNS, RUNS * Milestone.values().length - 1);
    }

    @Test
    void moreWarmthIsNeverLater() {
        SplittableRandom random = new SplittableRandom(17);
        int earlier = 0;
        for (int run = 0; run < RUNS; run++) {
            double[] hours = hours(random);
            double[] warmer = Arrays.stream(hours)
                    .map(celsius -> celsius + random.nextDouble())
                    .toArray();
            for (Milestone milestone : Milestone.values()) {
                Span cool = span(milestone, Warming.hours(hours), TwoSums.NONE);
                Span warm = span(milestone, Warming.hours(warmer), TwoSums.NONE);
                assertThat(warm.earlyDays()).isLessThanOrEqualTo(cool.earlyDays());
                assertThat(warm.lateDays()).isLessThanOrEqualTo(cool.lateDays());
                earlier += warm.lateDays() < cool.lateDays() ? 1 : 0;
            }
        }
        assertThat(earlier).isGreaterThan(RUNS);
    }

    /** Hours at one temperature and that temperature itself give the same, also where the hours end in between. */
    @Test
    void hoursOfOneTemperatureAreSteadyWarming() {
        SplittableRandom random = new SplittableRandom(5);
        for (int run = 0; run < RUNS; run++) {
            double celsius = 20 + 14 * random.nextDouble();
            double[] hours = new double[random.nextInt(24 * 100)];
            Arrays.fill(hours, celsius);
            for (Milestone milestone : Milestone.values()) {
                Span steady = span(milestone, Warming.steady(celsius), TwoSums.NONE);
                Span hourly = span(milestone, Warming.hoursThen(hours, celsius), TwoSums.NONE);
                assertThat(hourly.earlyDays()).isEqualTo(steady.earlyDays(), within(1e-6));
                assertThat(hourly.lateDays()).isEqualTo(steady.lateDays(), within(1e-6));
            }
        }
    }

    /** Warmth had before and warmth to come add up: a course cut in two gives what the whole gives. */
    @Test
    void warmingMayBeCutInTwo() {
        SplittableRandom random = new SplittableRandom(11);
        int compared = 0;
        for (int run = 0; run < RUNS; run++) {
            double[] hours = hours(random);
            int cut = 24 * (1 + random.nextInt(hours.length / 24 - 1));
            TwoSums had = Warming.hours(hours).gatheredBy(Leafcutters.SETTINGS, cut / 24.0);
            Warming rest = Warming.hours(Arrays.copyOfRange(hours, cut, hours.length));
            Span whole = span(Milestone.HALF_FEMALES, Warming.hours(hours), TwoSums.NONE);
            Span after = span(Milestone.HALF_FEMALES, rest, had);
            if (whole.isSure() && after.earlyDays() > 1) {
                assertThat(after.earlyDays() + cut / 24.0).isEqualTo(whole.earlyDays(), within(1e-6));
                assertThat(after.lateDays() + cut / 24.0).isEqualTo(whole.lateDays(), within(1e-6));
                compared++;
            }
        }
        assertThat(compared).isGreaterThan(20);
    }

    /** What a seller says of days to flight is met to the half day of the calendar. */
    @Test
    void daysToFlightAreMet() {
        SplittableRandom random = new SplittableRandom(3);
        for (int run = 0; run < RUNS; run++) {
            double celsius = 22 + 12 * random.nextDouble();
            double days = 0.6 + 9 * random.nextDouble();
            TwoSums had = Leafcutters.CLOCK.hadWhenFlightIsIn(days, celsius);
            Span male = span(Milestone.FIRST_MALE, Warming.steady(celsius), had);
            assertThat(male.earlyDays()).isEqualTo(days - 0.5, within(1e-9));
            assertThat(male.lateDays()).isEqualTo(days + 0.5, within(1e-9));
        }
    }

    /** A hold without warmth puts everything off by just its length; one that still warms, by less. */
    @Test
    void aHoldPutsOffByItsLength() {
        Span plain = span(Milestone.HALF_FEMALES, Warming.steady(29.4), TwoSums.NONE);
        Span cold = span(Milestone.HALF_FEMALES, Warming.held(29.4, 14, 12, 10), TwoSums.NONE);
        Span mild = span(Milestone.HALF_FEMALES, Warming.held(29.4, 14, 18, 10), TwoSums.NONE);

        assertThat(cold.earlyDays()).isEqualTo(plain.earlyDays() + 10, within(1e-9));
        assertThat(cold.lateDays()).isEqualTo(plain.lateDays() + 10, within(1e-9));
        assertThat(mild.earlyDays()).isEqualTo(plain.earlyDays() + 10 - 20 / 13.4, within(0.01));
        assertThat(mild.lateDays()).isEqualTo(plain.lateDays() + 10, within(0.01));
    }

    @Test
    void belowTheBasesNothingComes() {
        Span cold = span(Milestone.WHITE_PUPAE, Warming.steady(16), TwoSums.NONE);
        Span between = span(Milestone.WHITE_PUPAE, Warming.steady(17), TwoSums.NONE);

        assertThat(cold.earlyDays()).isInfinite();
        assertThat(between.earlyDays()).isFinite();
        assertThat(between.isSure()).isFalse();
        assertThat(Leafcutters.SETTINGS.answersSteady(19.99)).isFalse();
        assertThat(Leafcutters.SETTINGS.answersSteady(20)).isTrue();
        assertThat(Leafcutters.SETTINGS.answersSteady(34)).isTrue();
        assertThat(Leafcutters.SETTINGS.answersSteady(34.01)).isFalse();
        // Above the best rate nothing is quicker.
        assertThat(span(Milestone.MOST_OUT, Warming.steady(34), TwoSums.NONE))
                .isEqualTo(span(Milestone.MOST_OUT, Warming.steady(33), TwoSums.NONE));
    }

    /** A longer hold is never judged better than a shorter one, nor without warm hours better than with. */
    @Test
    void longerHoldsAreNeverBetter() {
        Holding holding = new Holding(Leafcutters.TABLE);
        List<Stage> stages = List.of(Stage.values());
        SplittableRandom random = new SplittableRandom(8);
        for (int run = 0; run < 2000; run++) {
            Stage stage = stages.get(random.nextInt(stages.size()));
            double celsius = 25 * random.nextDouble();
            double days = 60 * random.nextDouble();
            double pulse = 4 * random.nextDouble();
            Holding.Verdict verdict = holding.judge(stage, celsius, days, pulse);
            assertThat(Holding.worse(verdict, holding.judge(stage, celsius, days + 1, pulse)))
                    .isEqualTo(holding.judge(stage, celsius, days + 1, pulse));
            assertThat(Holding.worse(verdict, holding.judge(stage, celsius, days, 0)))
                    .isEqualTo(holding.judge(stage, celsius, days, 0));
        }
    }

    /** Of twenty summers two are left outside on either side, of nine none; all inside lies in the band. */
    @Test
    void bandsLeaveATenthOutside() {
        SplittableRandom random = new SplittableRandom(4);
        for (int count : new int[] {1, 9, 20, 43}) {
            List<Span> years = new ArrayList<>();
            for (int i = 0; i < count; i++) {
                double early = 40 * random.nextDouble();
                years.add(new Span(early, early + 10));
            }
            Span band = YearsOfDates.band(years);
            assertThat(years.stream().filter(year -> year.earlyDays() < band.earlyDays()))
                    .hasSize(count / 10);
            assertThat(years.stream().filter(year -> year.lateDays() > band.lateDays()))
                    .hasSize(count / 10);
            assertThat(YearsOfDates.inTime(years, band.lateDays())).isEqualTo(count - count / 10);
        }
        assertThatThrownBy(() -> YearsOfDates.band(List.of())).hasMessage("a band needs a year");
        assertThatThrownBy(() -> new Span(3, 2)).hasMessageContaining("3.0 to 2.0");
    }
}
