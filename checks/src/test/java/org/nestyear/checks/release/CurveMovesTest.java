package org.nestyear.checks.release;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.MonthDay;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.nestyear.core.plan.Plan;
import org.nestyear.core.release.CurvePoint;
import org.nestyear.core.season.BloomDates;
import org.nestyear.core.season.Goal;
import org.nestyear.core.season.Wintered;
import org.nestyear.core.weather.DailyWeather;

/**
 * The curve moves the right way: each test changes one thing and compares two plans over fifteen Washington years. Only
 * directions are claimed, from the definitions of the design note; sizes are printed.
 */
@Tag("regression")
class CurveMovesTest {
    /** Enough for windows by paired differences, and quick. */
    private static final int YEARS = 15;

    private static LocalDate best(Plan plan) {
        return plan.release().curve().stream()
                .filter(point -> point.cost() == 0)
                .map(CurvePoint::date)
                .findFirst()
                .orElseThrow();
    }

    private static CurvePoint on(Plan plan, LocalDate date) {
        return plan.release().curve().stream()
                .filter(point -> point.date().equals(date))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void fewerTunnelsGiveLessBroodAndRunOutMoreOften() {
        double brood = Double.POSITIVE_INFINITY;
        double capped = -1;
        for (int tunnels : new int[] {20_000, 330, 120, 40}) {
            Draft draft = Draft.washington(YEARS);
            draft.tunnels(tunnels);
            Plan plan = draft.plan();
            System.out.println(tunnels + " tunnels: " + plan.outlook().daughters() + " daughters, run out in "
                    + plan.release().shareCapped());
            assertThat(plan.outlook().daughters()).isLessThan(brood);
            assertThat(plan.release().shareCapped()).isGreaterThanOrEqualTo(capped);
            brood = plan.outlook().daughters();
            capped = plan.release().shareCapped();
        }
        assertThat(capped).isEqualTo(1);
    }

    @Test
    void fewerMalesLeaveMoreFemalesUnmated() {
        double unmated = -1;
        double brood = Double.POSITIVE_INFINITY;
        for (int males : new int[] {900, 20, 5, 1, 0}) {
            Draft draft = Draft.washington(YEARS);
            draft.males = males;
            Plan plan = draft.plan();
            System.out.println(males + " males: unmated " + plan.outlook().unmated() + ", daughters "
                    + plan.outlook().daughters());
            assertThat(plan.outlook().unmated()).isGreaterThan(unmated);
            assertThat(plan.outlook().daughters()).isLessThan(brood);
            unmated = plan.outlook().unmated();
            brood = plan.outlook().daughters();
        }
        assertThat(unmated).isEqualTo(1);
        assertThat(brood).isZero();
    }

    @Test
    void laterBloomMakesTheWindowLater() {
        Draft sooner = Draft.washington(YEARS);
        sooner.goal = Goal.BOTH;
        Plan early = sooner.plan();
        Draft later = Draft.washington(YEARS);
        later.goal = Goal.BOTH;
        later.bloom = new BloomDates.ThermalTime(MonthDay.of(2, 1), 0, 600, 18);
        Plan late = later.plan();
        System.out.println("bloom at 424: " + early.release().window() + ", at 600: "
                + late.release().window());
        assertThat(late.outlook().targetBloom().middle())
                .isAfter(early.outlook().targetBloom().middle());
        assertThat(best(late)).isAfter(best(early));
        assertThat(late.release().window().from())
                .isAfter(early.release().window().from());
        assertThat(late.release().window().to())
                .isAfter(early.release().window().to());
    }

    private static DailyWeather warmer(DailyWeather day, double celsius) {
        return new DailyWeather(
                day.date(), day.minC() + celsius, day.maxC() + celsius, day.rainMm(), Double.NaN, Double.NaN);
    }

    @Test
    void warmerSpringMakesTheWindowEarlier() {
        Plan usual = Draft.washington(YEARS).plan();
        Draft warm = Draft.washington(YEARS);
        warm.eachDay(day -> warmer(day, 2));
        Plan early = warm.plan();
        System.out.println("usual: " + usual.release().window() + ", 2 °C warmer: "
                + early.release().window());
        assertThat(best(early)).isBefore(best(usual));
        assertThat(early.release().window().from())
                .isBefore(usual.release().window().from());
        assertThat(early.outlook().halfFemales().middle())
                .isBefore(usual.outlook().halfFemales().middle());
    }

    /**
     * Only what was measured this season differs: the seven weeks from New Year to the day of asking were 2 °C colder or
     * warmer than they were. Under the aim of brood alone a spring so early that the bees cannot catch the bloom may move
     * the date the other way, to the warmer flight of later weeks; so the aim here is both.
     */
    @Test
    void warmWeeksAlreadyMeasuredMakeTheRestEarlier() {
        Plan[] plans = new Plan[2];
        for (int warm = 0; warm < 2; warm++) {
            Draft draft = Draft.washington(YEARS);
            draft.goal = Goal.BOTH;
            draft.today = LocalDate.of(2012, 2, 20);
            draft.chillDays = 120;
            double celsius = warm == 1 ? 2 : -2;
            draft.eachDay(day -> day.date().isBefore(LocalDate.of(2012, 1, 1)) ? day : warmer(day, celsius));
            plans[warm] = draft.plan();
        }
        System.out.println("after cold weeks " + plans[0].release().window() + ", after warm weeks "
                + plans[1].release().window());
        assertThat(plans[1].outlook().targetBloom().middle())
                .isBefore(plans[0].outlook().targetBloom().middle());
        assertThat(best(plans[1])).isBefore(best(plans[0]));
        assertThat(plans[1].release().window().from())
                .isBefore(plans[0].release().window().from());
    }

    @Test
    void rainEveryDayGivesFewerCells() {
        Draft dry = Draft.washington(YEARS);
        dry.eachDay(day -> new DailyWeather(day.date(), day.minC(), day.maxC(), 0, Double.NaN, Double.NaN));
        Draft wet = Draft.washington(YEARS);
        wet.eachDay(day -> new DailyWeather(day.date(), day.minC(), day.maxC(), 6, Double.NaN, Double.NaN));
        Plan sun = dry.plan();
        Plan rain = wet.plan();
        System.out.println(
                "cells dry " + sun.outlook().cells() + ", wet " + rain.outlook().cells());
        assertThat(rain.outlook().cells()).isLessThan(sun.outlook().cells()).isGreaterThan(0);
        assertThat(rain.outlook().daughters()).isLessThan(sun.outlook().daughters());
    }

    @Test
    void lessColdLeavesMoreShutAndBringsTheRestOutLater() {
        Draft poor = Draft.washington(YEARS);
        poor.chillDays = 20;
        Plan enough = Draft.washington(YEARS).plan();
        Plan little = poor.plan();
        LocalDate day = LocalDate.of(2013, 3, 25);
        System.out.println("daughters on " + day + ": " + on(enough, day).daughters() + " and "
                + on(little, day).daughters() + "; half the females "
                + enough.outlook().halfFemales() + " and "
                + little.outlook().halfFemales());
        assertThat(on(little, day).daughters()).isLessThan(on(enough, day).daughters());
        assertThat(little.outlook().halfFemales().middle())
                .isAfter(enough.outlook().halfFemales().middle());
    }

    /** Bees at outdoor warmth choose their own day, so there is nothing to hold back and nothing to ask again. */
    @Test
    void beesKeptOutdoorsAreNotSplit() {
        Draft draft = Draft.washington(YEARS);
        draft.wintered = Wintered.OUTDOORS;
        Plan plan = draft.plan();
        assertThat(plan.release().releases()).hasSize(1);
        assertThat(plan.release().splitReason()).isEqualTo("own-time");
        assertThat(plan.jobs()).noneMatch(job -> job.id().equals("ask-again"));
    }
}
