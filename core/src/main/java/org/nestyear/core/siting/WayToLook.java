package org.nestyear.core.siting;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;
import org.nestyear.core.place.Site;
import org.nestyear.core.sun.FrontSun;

/**
 * One way for a house front to look, over the weeks of its bees.
 *
 * @param facesDeg degrees clockwise from north
 * @param firstSun mean time of day at which the sun first shines on the front, by the clock of the place, or null where on
 *     some day it never does
 * @param warmFrom mean time of day at which the front first has light enough to warm a bee, or null likewise
 * @param morningMinutes mean minutes of sun before 10:00 by the sun
 * @param morningWhM2 mean light before then, Wh/m²
 * @param hottestWm2 most light after noon on any of the days, W/m²
 * @param watchDays days a year on which the tunnels pass the limit to watch
 * @param urgentDays days a year on which they pass the urgent limit
 * @param urgentDaysLow the same with the least excess over the air
 * @param urgentDaysHigh the same with the most
 */
public record WayToLook(
        double facesDeg,
        @Nullable LocalTime firstSun,
        @Nullable LocalTime warmFrom,
        double morningMinutes,
        double morningWhM2,
        double hottestWm2,
        double watchDays,
        double urgentDays,
        double urgentDaysLow,
        double urgentDaysHigh) {
    /** Days of a week, by definition. */
    private static final int WEEK_DAYS = 7;

    /**
     * One way to look.
     *
     * @param days the front on the days looked at
     * @param weeks its tunnels week by week
     * @param coolWeeks the same with the least excess over the air
     * @param hotWeeks the same with the most
     */
    public static WayToLook of(
            Site site,
            List<FrontSun> days,
            List<HotTunnels> weeks,
            List<HotTunnels> coolWeeks,
            List<HotTunnels> hotWeeks) {
        return new WayToLook(
                days.get(0).facesDeg(),
                meanTime(site, days, FrontSun::firstSun),
                meanTime(site, days, FrontSun::warmFrom),
                days.stream().mapToDouble(FrontSun::morningMinutes).average().orElse(0),
                days.stream().mapToDouble(FrontSun::morningWhM2).average().orElse(0),
                days.stream().mapToDouble(FrontSun::hottestWm2).max().orElse(0),
                daysAYear(weeks, HotTunnels::watchShare),
                daysAYear(weeks, HotTunnels::urgentShare),
                daysAYear(coolWeeks, HotTunnels::urgentShare),
                daysAYear(hotWeeks, HotTunnels::urgentShare));
    }

    private static double daysAYear(List<HotTunnels> weeks, ToDoubleFunction<HotTunnels> share) {
        return WEEK_DAYS * weeks.stream().mapToDouble(share).sum();
    }

    private static @Nullable LocalTime meanTime(
            Site site, List<FrontSun> days, Function<FrontSun, @Nullable Instant> time) {
        long seconds = 0;
        for (FrontSun day : days) {
            Instant at = time.apply(day);
            if (at == null) {
                return null;
            }
            LocalDate date = day.date();
            seconds += at.getEpochSecond() - date.atStartOfDay(site.zone()).toEpochSecond();
        }
        return LocalTime.ofSecondOfDay(Math.floorMod(seconds / days.size(), LocalTime.MAX.toSecondOfDay() + 1));
    }

    /**
     * Ways in order of their morning light as a share of the most, less so much for each day a year that is too hot.
     *
     * @param hotDays what counts as too hot for these bees, days a year
     * @param worth share of the most morning light that a hot day takes away
     */
    public static List<WayToLook> inOrder(List<WayToLook> ways, ToDoubleFunction<WayToLook> hotDays, double worth) {
        double most = ways.stream().mapToDouble(WayToLook::morningWhM2).max().orElse(0);
        ToDoubleFunction<WayToLook> score =
                way -> (most > 0 ? way.morningWhM2() / most : 0) - worth * hotDays.applyAsDouble(way);
        return ways.stream()
                .sorted(Comparator.comparingDouble(score).reversed())
                .toList();
    }
}
