package org.nestyear.core.forage;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.nestyear.core.place.Site;
import org.nestyear.core.source.ReadLog;

/** Chooses plants that would close a gap: those that suit the region and bloom then, native ones first. */
final class PlantChoice {
    /** As many plants as a keeper can weigh; numerical. */
    private static final int MOST = 5;
    /** Mean share of full bloom from which a week counts as covered; numerical. */
    private static final double COVERED = 0.33;

    /** Days of a week, by definition; a numerical constant. */
    private static final int WEEK_DAYS = 7;

    private final Flora flora;
    private final Site site;
    private final boolean leafcutter;
    private final List<ToldFlowers> told;
    private final ReadLog read;
    /** Numbers of plants that are only tried, which stand behind no answer. */
    private final ReadLog tried;

    PlantChoice(Flora flora, Site site, boolean leafcutter, List<ToldFlowers> told, ReadLog read) {
        this.flora = flora;
        this.site = site;
        this.leafcutter = leafcutter;
        this.told = told;
        this.read = read;
        tried = new ReadLog(flora.numbers());
    }

    /** The gap of these weeks with what would close it. */
    ForageGap gap(List<ForageWeek> weeks) {
        RegionBloom region = flora.region(site).orElse(null);
        List<Suggestion> good = new ArrayList<>();
        List<GardenPlant> poor = new ArrayList<>();
        if (region != null) {
            for (GardenPlant plant : flora.plants()) {
                Standing standing = plant.in(region.region());
                boolean visited = leafcutter ? plant.leafcutter() : plant.mason();
                if (!standing.isPlanted() || !visited || isTold(plant)) {
                    continue;
                }
                Optional<Suggestion> covers = covering(plant, standing, weeks);
                if (covers.isPresent() && plant.breeding() == Breeding.PLAIN) {
                    good.add(covers.get());
                } else if (covers.isPresent()) {
                    poor.add(plant);
                }
            }
        }
        good.sort(Comparator.comparing(Suggestion::standing)
                .thenComparing(Comparator.comparingInt(Suggestion::weeks).reversed())
                .thenComparingDouble(s -> s.areaM2() == null ? 0 : s.areaM2().middle()));
        List<Suggestion> best = spread(good, weeks);
        best.forEach(s -> {
            FlowerYield.of(s.plant(), null, flora, read);
            flora.bloom(s.plant().bloom(), site, s.bloom().to().getYear(), read);
        });
        read.row("words_error_days");
        return new ForageGap(weeks, best, poor);
    }

    /** The best few, first those that cover a week that no better one does, so that no week goes without. */
    private static List<Suggestion> spread(List<Suggestion> sorted, List<ForageWeek> weeks) {
        List<Suggestion> chosen = new ArrayList<>();
        Set<ForageWeek> open = new LinkedHashSet<>(weeks);
        for (Suggestion each : sorted) {
            if (chosen.size() < MOST && open.removeIf(week -> covers(each.bloom(), week))) {
                chosen.add(each);
            }
        }
        for (Suggestion each : sorted) {
            if (chosen.size() < MOST && !chosen.contains(each)) {
                chosen.add(each);
            }
        }
        return sorted.stream().filter(chosen::contains).toList();
    }

    private static boolean covers(BloomSpan span, ForageWeek week) {
        return fullDays(span, week) >= COVERED * WEEK_DAYS;
    }

    /** Days of full bloom that a week's bloom amounts to. */
    private static double fullDays(BloomSpan span, ForageWeek week) {
        double days = 0;
        for (int d = 0; d < WEEK_DAYS; d++) {
            days += span.height(week.from().plusDays(d));
        }
        return days;
    }

    private Optional<Suggestion> covering(GardenPlant plant, Standing standing, List<ForageWeek> weeks) {
        BloomSpan span = flora.bloom(plant.bloom(), site, weeks.get(0).to().getYear(), tried)
                .orElse(null);
        if (span == null) {
            return Optional.empty();
        }
        FlowerYield yield = FlowerYield.of(plant, null, flora, tried);
        int covered = 0;
        double area = 0;
        for (ForageWeek week : weeks) {
            if (covers(span, week)) {
                covered++;
                area = Math.max(
                        area,
                        week.lacking() / fullDays(span, week) / yield.cellsM2().middle());
            }
        }
        Band perM2 = yield.cellsM2();
        double middle = area * perM2.middle();
        return covered == 0
                ? Optional.empty()
                : Optional.of(new Suggestion(
                        plant, standing, span, covered, new Band(middle / perM2.high(), area, middle / perM2.low())));
    }

    /** Plants for leaves that suit the region, native first. */
    List<Suggestion> forLeaves(int year) {
        RegionBloom region = flora.region(site).orElse(null);
        if (region == null) {
            return List.of();
        }
        List<Suggestion> leaves = new ArrayList<>();
        for (GardenPlant plant : flora.plants()) {
            Standing standing = plant.in(region.region());
            if (plant.leaf() && standing.isPlanted()) {
                LocalDate any = LocalDate.of(year, 1, 1);
                BloomSpan span = flora.bloom(plant.bloom(), site, year, read).orElse(new BloomSpan(any, any, any));
                leaves.add(new Suggestion(plant, standing, span, 0, null));
            }
        }
        leaves.sort(Comparator.comparing(Suggestion::standing));
        return leaves.subList(0, Math.min(MOST, leaves.size()));
    }

    private boolean isTold(GardenPlant plant) {
        return told.stream().anyMatch(each -> plant.equals(each.known()));
    }
}
