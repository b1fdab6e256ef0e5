package org.nestyear.core.bloom;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.nestyear.core.season.CommunityBloom;
import org.nestyear.core.season.Plant;
import org.nestyear.core.season.SeasonFrame;
import org.nestyear.core.season.SeasonWeather;

/** The bloom of all plants in reach, member by member. */
public final class BloomForecast {
    private final List<PlantForecast> targets = new ArrayList<>();
    private final List<PlantForecast> others = new ArrayList<>();
    private final List<PlantForecast> all = new ArrayList<>();
    private final @Nullable CommunityBloom community;
    private final BloomSettings settings;

    /**
     * @param plants at least one target
     * @param community other bloom as told by the keeper, or null for the default
     * @param ensemble this season's members
     * @param today the day of the plan
     */
    public BloomForecast(
            List<Plant> plants,
            @Nullable CommunityBloom community,
            BloomSettings settings,
            List<SeasonWeather> ensemble,
            LocalDate today) {
        this(plants, community, settings, ensemble, today, PastBlooms.none());
    }

    /**
     * The same for plants of which some have dates of past years.
     *
     * @param past the models chosen for those plants
     * @throws IllegalArgumentException if a plant's bloom hangs on such dates and no model was chosen for it
     */
    public BloomForecast(
            List<Plant> plants,
            @Nullable CommunityBloom community,
            BloomSettings settings,
            List<SeasonWeather> ensemble,
            LocalDate today,
            PastBlooms past) {
        for (Plant plant : plants) {
            PlantForecast forecast = new PlantForecast(plant, settings, ensemble, today, past);
            all.add(forecast);
            (plant.target() ? targets : others).add(forecast);
        }
        this.community = community;
        this.settings = settings;
    }

    /** Standard error of the target's date, d: the largest among the targets. */
    public double errorDays() {
        return targets.stream().mapToDouble(PlantForecast::errorDays).max().orElse(0);
    }

    /** Middle of the target bloom in a member, as an index of its days: the mean over the targets. */
    public double targetMiddle(SeasonWeather member) {
        return targets.stream().mapToDouble(t -> t.middle(member)).average().orElse(0);
    }

    /** First day of the earliest target bloom in a member, as an index of its days. */
    public double targetFirst(SeasonWeather member) {
        return targets.stream()
                .mapToDouble(t -> t.middle(member) - halfSpan(t))
                .min()
                .orElse(0);
    }

    /** Last day of the latest target bloom in a member, as an index of its days. */
    public double targetLast(SeasonWeather member) {
        return targets.stream()
                .mapToDouble(t -> t.middle(member) + halfSpan(t))
                .max()
                .orElse(0);
    }

    private double halfSpan(PlantForecast plant) {
        return plant.sdDays() * settings.spanSds() / 2;
    }

    /**
     * The food through a member's season.
     *
     * @param lateDays days by which everything not yet in bloom comes later than forecast; negative for earlier
     * @param level factor on the level of the other bloom, 1 as told
     */
    public FoodCurve curve(SeasonWeather member, double lateDays, double level) {
        int n = member.days();
        double late = errorDays() > 0 ? lateDays : 0;
        List<Bell> targetBells = bells(targets, member, late);
        List<Bell> otherBells = bells(others, member, late);
        Sides sides = sides(member, late);
        double[] target = new double[n];
        double[] food = new double[n];
        for (int d = 0; d < n; d++) {
            for (Bell bell : targetBells) {
                target[d] = Math.max(target[d], bell.height(d));
            }
            double other = sides.height(d);
            for (Bell bell : otherBells) {
                other = Math.max(other, sides.level * bell.height(d));
            }
            food[d] = Math.max(target[d], Math.min(1, other * level));
        }
        return FoodCurve.of(target, food, targetMiddle(member) + late);
    }

    /**
     * Each plant's own share of full bloom by day in a member, 0 to 1, in the order in which they were told.
     *
     * @param lateDays as for {@link #curve}
     */
    public List<double[]> plants(SeasonWeather member, double lateDays) {
        List<double[]> heights = new ArrayList<>();
        for (Bell bell : bells(all, member, errorDays() > 0 ? lateDays : 0)) {
            double[] height = new double[member.days()];
            for (int d = 0; d < height.length; d++) {
                height[d] = bell.height(d);
            }
            heights.add(height);
        }
        return heights;
    }

    /**
     * The other bloom by day in a member as the keeper told it, 0 to 1; nothing where it was not told.
     *
     * @param lateDays as for {@link #curve}
     */
    public double[] toldCommunity(SeasonWeather member, double lateDays) {
        double[] height = new double[member.days()];
        if (community != null) {
            Sides sides = sides(member, errorDays() > 0 ? lateDays : 0);
            for (int d = 0; d < height.length; d++) {
                height[d] = sides.height(d);
            }
        }
        return height;
    }

    private static List<Bell> bells(List<PlantForecast> plants, SeasonWeather member, double late) {
        return plants.stream()
                .map(p -> new Bell(p.middle(member) + (p.isObserved() ? 0 : late), p.sdDays()))
                .toList();
    }

    /** A normal curve of height 1, in day indices. */
    private record Bell(double middle, double sd) {
        /** Spreads from the middle beyond which nothing is left; numerical. */
        private static final double FAR = 8;

        double height(double d) {
            double z = (d - middle) / sd;
            return Math.abs(z) > FAR ? 0 : Math.exp(-z * z / 2);
        }
    }

    private Sides sides(SeasonWeather member, double late) {
        SeasonFrame frame = member.frame();
        double middle = targetMiddle(member) + late;
        if (community == null) {
            double to = member.index(frame.ofDayOfYear(settings.communityEndDay()));
            return new Sides(
                    targetFirst(member) + late - settings.communityLeadDays(),
                    middle,
                    Math.max(to, middle + 1),
                    settings.communityLevel());
        }
        double shift =
                targets.stream().mapToDouble(t -> t.shift(member)).average().orElse(0) + late;
        double from = member.index(community.from()) + shift;
        double peak = member.index(community.peak()) + shift;
        return new Sides(from, peak, Math.max(member.index(community.to()), peak), community.level());
    }

    /** A curve with straight sides, in day indices. */
    private record Sides(double from, double peak, double to, double level) {
        double height(double d) {
            if (d < from || d > to) {
                return 0;
            }
            if (d <= peak) {
                return peak > from ? level * (d - from) / (peak - from) : level;
            }
            return level * (to - d) / (to - peak);
        }
    }
}
