package org.nestyear.core.forage;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.nestyear.core.season.BloomDates;
import org.nestyear.core.season.CommunityBloom;
import org.nestyear.core.season.Plant;
import org.nestyear.core.source.ParameterReader;

/** A line of cells without weather in it: as the keeper told them or from the day nesting begins, with the bloom as told. */
public final class ToldLine {
    private ToldLine() {}

    /**
     * The same cells each day.
     *
     * @param plants the plants; those without dates of this season count as not in bloom
     * @param community other bloom as told, or null
     * @param from the first day of nesting
     * @param to the last, not before the first
     * @param cells cells a day, 0 or more
     */
    public static FlowerLine even(
            List<Plant> plants, @Nullable CommunityBloom community, LocalDate from, LocalDate to, double cells) {
        if (to.isBefore(from) || !(cells >= 0)) {
            throw new IllegalArgumentException(
                    "a line needs days in order and cells from 0 on, got " + from + ", " + to + ", " + cells);
        }
        double[] even = new double[(int) ChronoUnit.DAYS.between(from, to) + 1];
        Arrays.fill(even, cells);
        return line(plants, community, from, even);
    }

    /**
     * The line of leafcutter bees from the day on which they begin to nest: part of the females that fly stay to nest,
     * die by a share a day for as long as any nests, and build their cells at an even pace while they live.
     *
     * @param plants the plants; those without dates of this season count as not in bloom
     * @param community other bloom as told, or null
     * @param from the first day of nesting
     * @param females female cocoons, 0 or more
     * @param numbers the flora's, read through a log
     * @param bees those of the leafcutter, read through a log
     */
    public static FlowerLine ofLeafcutters(
            List<Plant> plants,
            @Nullable CommunityBloom community,
            LocalDate from,
            int females,
            ParameterReader numbers,
            ParameterReader bees) {
        double[] cells = new double[(int) Math.round(bees.value("nesting_longest_days"))];
        double stay = 1 - bees.value("nesting_death");
        double alive = 1;
        double days = 0;
        for (int d = 0; d < cells.length; d++) {
            cells[d] = alive;
            days += alive;
            alive *= stay;
        }
        double aDay = females * numbers.value("leafcutter_staying") * numbers.value("leafcutter_cells_a_female") / days;
        for (int d = 0; d < cells.length; d++) {
            cells[d] *= aDay;
        }
        return line(plants, community, from, cells);
    }

    private static FlowerLine line(
            List<Plant> plants, @Nullable CommunityBloom community, LocalDate from, double[] cells) {
        double[] other = new double[cells.length];
        if (community != null) {
            BloomSpan span = new BloomSpan(community.from(), community.peak(), community.to());
            for (int d = 0; d < cells.length; d++) {
                other[d] = cells[d] * community.level() * span.height(from.plusDays(d));
            }
        }
        return new FlowerLine(
                from,
                cells,
                cells,
                other,
                plants.stream().map(plant -> heights(plant, from, cells.length)).toList());
    }

    private static double[] heights(Plant plant, LocalDate from, int days) {
        double[] heights = new double[days];
        if (plant.bloom() instanceof BloomDates.Dated dated) {
            LocalDate middle = dated.first().plusDays(ChronoUnit.DAYS.between(dated.first(), dated.last()) / 2);
            BloomSpan span = new BloomSpan(dated.first(), middle, dated.last());
            for (int d = 0; d < days; d++) {
                heights[d] = span.height(from.plusDays(d));
            }
        }
        return heights;
    }

    /** True for a plant whose bloom of this season is told in dates. */
    public static boolean isDated(Plant plant) {
        return plant.bloom() instanceof BloomDates.Dated;
    }
}
