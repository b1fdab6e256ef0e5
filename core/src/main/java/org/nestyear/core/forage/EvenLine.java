package org.nestyear.core.forage;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.nestyear.core.season.BloomDates;
import org.nestyear.core.season.CommunityBloom;
import org.nestyear.core.season.Plant;

/** A line of cells that the keeper told, the same each day, with the bloom as told and no weather in it. */
public final class EvenLine {
    private EvenLine() {}

    /**
     * The line.
     *
     * @param plants the plants; those without dates of this season count as not in bloom
     * @param community other bloom as told, or null
     * @param from the first day of nesting
     * @param to the last, not before the first
     * @param cells cells a day, 0 or more
     */
    public static FlowerLine of(
            List<Plant> plants, @Nullable CommunityBloom community, LocalDate from, LocalDate to, double cells) {
        if (to.isBefore(from) || !(cells >= 0)) {
            throw new IllegalArgumentException(
                    "a line needs days in order and cells from 0 on, got " + from + ", " + to + ", " + cells);
        }
        int days = (int) ChronoUnit.DAYS.between(from, to) + 1;
        double[] even = new double[days];
        Arrays.fill(even, cells);
        double[] other = new double[days];
        if (community != null) {
            BloomSpan span = new BloomSpan(community.from(), community.peak(), community.to());
            for (int d = 0; d < days; d++) {
                other[d] = cells * community.level() * span.height(from.plusDays(d));
            }
        }
        return new FlowerLine(
                from,
                even,
                even,
                other,
                plants.stream().map(plant -> heights(plant, from, days)).toList());
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
