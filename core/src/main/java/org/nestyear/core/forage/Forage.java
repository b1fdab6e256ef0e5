package org.nestyear.core.forage;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.nestyear.core.place.Site;
import org.nestyear.core.season.Plant;
import org.nestyear.core.source.Parameter;
import org.nestyear.core.source.ReadLog;

/**
 * Flowers in reach against the cells of a season, week by week.
 *
 * @param region the region, or null where it is not known
 * @param plants the told plants, in their order
 * @param weeks the weeks of nesting; empty when no cell is wanted
 * @param gaps runs of weeks that are short or probably so
 * @param leafPlants told plants within reach whose leaves leafcutter bees cut
 * @param leafSuggestions plants for leaves, when the bees want leaves and none is told
 * @param nectarFlowers alfalfa flowers that hold the nectar of one leafcutter cell, or null for other bees
 * @param basis the numbers read
 */
public record Forage(
        @Nullable RegionBloom region,
        List<ToldFlowers> plants,
        List<ForageWeek> weeks,
        List<ForageGap> gaps,
        List<ToldFlowers> leafPlants,
        List<Suggestion> leafSuggestions,
        @Nullable Double nectarFlowers,
        List<Parameter> basis) {
    /** Weeks with a smaller share of all cells stand before or behind the season; numerical. */
    private static final double NEGLIGIBLE = 0.01;

    /** Days of a week, by definition; a numerical constant. */
    private static final int WEEK_DAYS = 7;

    public Forage {
        plants = List.copyOf(plants);
        weeks = List.copyOf(weeks);
        gaps = List.copyOf(gaps);
        leafPlants = List.copyOf(leafPlants);
        leafSuggestions = List.copyOf(leafSuggestions);
        basis = List.copyOf(basis);
    }

    /**
     * Holds the flowers against the cells.
     *
     * @param told the plants in the order of the line
     * @param leafcutter whether the bees are leafcutters
     */
    public static Forage of(List<Plant> told, Site site, Flora flora, boolean leafcutter, FlowerLine line) {
        ReadLog read = new ReadLog(flora.numbers());
        List<ToldFlowers> plants =
                told.stream().map(plant -> flowers(plant, flora, read)).toList();
        List<ForageWeek> weeks = weeks(plants, line, line.end(read.value("nesting_share_least")));
        PlantChoice choice = new PlantChoice(flora, site, leafcutter, plants, read);
        List<ForageGap> gaps = new ArrayList<>();
        List<ForageWeek> run = new ArrayList<>();
        for (ForageWeek week : weeks) {
            if (week.fed().isGap()) {
                run.add(week);
            } else if (!run.isEmpty()) {
                gaps.add(choice.gap(run));
                run = new ArrayList<>();
            }
        }
        if (!run.isEmpty()) {
            gaps.add(choice.gap(run));
        }
        List<ToldFlowers> leaves = plants.stream()
                .filter(plant -> leafcutter
                        && plant.weight() > 0
                        && plant.known() != null
                        && plant.known().leaf())
                .toList();
        List<Suggestion> forLeaves =
                leafcutter && leaves.isEmpty() ? choice.forLeaves(line.date(0).getYear()) : List.of();
        Double nectar = leafcutter ? nectarFlowers(read) : null;
        return new Forage(flora.region(site).orElse(null), plants, weeks, gaps, leaves, forLeaves, nectar, read.read());
    }

    /** True when at least one plant has cover within reach, so that there is something to reckon with. */
    public boolean isTold() {
        return plants.stream().anyMatch(ToldFlowers::counts);
    }

    /** Alfalfa flowers that hold the nectar of one leafcutter cell (Cane, Gardner &amp; Harrison 2011). */
    private static Double nectarFlowers(ReadLog read) {
        return read.value("sugar_per_cell_mg") / read.value("sugar_per_alfalfa_flower_mg");
    }

    private static ToldFlowers flowers(Plant plant, Flora flora, ReadLog read) {
        GardenPlant known = flora.find(plant).orElse(null);
        Double distance = plant.stand().distanceM();
        double trade = read.value("trade_ring_m");
        return new ToldFlowers(
                plant,
                known,
                weight(distance, read),
                distance == null || distance <= trade,
                FlowerYield.of(known, plant.stand().flowersM2(), flora, read));
    }

    /**
     * How far a plant counts by its distance.
     *
     * @param distanceM metres, or null when not told, which counts in full
     */
    static double weight(@Nullable Double distanceM, ReadLog read) {
        double full = read.value("full_ring_m");
        double half = read.value("half_ring_m");
        double part = read.value("half_ring_weight");
        if (distanceM == null || distanceM <= full) {
            return 1;
        }
        return distanceM <= half ? part : 0;
    }

    private static List<ForageWeek> weeks(List<ToldFlowers> plants, FlowerLine line, int end) {
        List<ForageWeek> all = new ArrayList<>();
        double total = 0;
        int day = 0;
        LocalDate monday = line.date(0).with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
        while (day < end) {
            double cells = 0;
            double other = 0;
            Band supply = Band.NONE;
            LocalDate next = monday.plusDays(WEEK_DAYS);
            for (; day < end && line.date(day).isBefore(next); day++) {
                cells += line.cells(day);
                other += line.otherCells(day);
                for (int p = 0; p < plants.size(); p++) {
                    supply = supply.plus(plants.get(p).cells().times(line.bloom(p, day)));
                }
            }
            if (cells > 0) {
                all.add(new ForageWeek(monday, next.minusDays(1), cells, supply, other));
            }
            total += cells;
            monday = next;
        }
        double least = total * NEGLIGIBLE;
        int from = 0;
        int to = all.size();
        while (from < to && all.get(from).cells() < least) {
            from++;
        }
        while (to > from && all.get(to - 1).cells() < least) {
            to--;
        }
        return all.subList(from, to);
    }
}
