package org.nestyear.core.season;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.nestyear.core.place.Site;
import org.nestyear.core.weather.WeatherRecord;

/**
 * Everything a plan is computed from. Rows of the weather record after {@code today} are never read.
 *
 * @param site the place
 * @param weather what the station measured
 * @param forecast forecast days after today, or null
 * @param batches the bees, at least one batch
 * @param nests free tunnels
 * @param plants plants in reach, at least one of them the target
 * @param community all other bloom in reach, or null for the default with its warning
 * @param goal what the keeper wants most
 * @param today the day of the plan
 * @param sprays sprays announced nearby
 */
public record SeasonInputs(
        Site site,
        WeatherRecord weather,
        @Nullable WeatherRecord forecast,
        List<Batch> batches,
        List<Nests> nests,
        List<Plant> plants,
        @Nullable CommunityBloom community,
        Goal goal,
        LocalDate today,
        List<Spray> sprays) {
    public SeasonInputs {
        batches = List.copyOf(batches);
        nests = List.copyOf(nests);
        plants = List.copyOf(plants);
        sprays = List.copyOf(sprays);
        if (batches.isEmpty()) {
            throw new IllegalArgumentException("a plan needs at least one batch of bees");
        }
        if (plants.stream().noneMatch(Plant::target)) {
            throw new IllegalArgumentException("a plan needs at least one target plant");
        }
    }

    /** A season without a spray announced. */
    public SeasonInputs(
            Site site,
            WeatherRecord weather,
            @Nullable WeatherRecord forecast,
            List<Batch> batches,
            List<Nests> nests,
            List<Plant> plants,
            @Nullable CommunityBloom community,
            Goal goal,
            LocalDate today) {
        this(site, weather, forecast, batches, nests, plants, community, goal, today, List.of());
    }

    /** The same season with sprays announced. */
    public SeasonInputs withSprays(List<Spray> others) {
        return new SeasonInputs(site, weather, forecast, batches, nests, plants, community, goal, today, others);
    }

    /** The same season with other batches. */
    public SeasonInputs withBatches(List<Batch> others) {
        return new SeasonInputs(site, weather, forecast, others, nests, plants, community, goal, today, sprays);
    }

    /** The same season on another day. */
    public SeasonInputs withToday(LocalDate other) {
        return new SeasonInputs(site, weather, forecast, batches, nests, plants, community, goal, other, sprays);
    }

    /** The same season at another place, or with the house turned. */
    public SeasonInputs withSite(Site other) {
        return new SeasonInputs(other, weather, forecast, batches, nests, plants, community, goal, today, sprays);
    }

    /** The same season with another aim. */
    public SeasonInputs withGoal(Goal other) {
        return new SeasonInputs(site, weather, forecast, batches, nests, plants, community, other, today, sprays);
    }
}
