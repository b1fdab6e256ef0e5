package org.nestyear.core.bloom;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.nestyear.core.season.BloomDates;
import org.nestyear.core.season.Plant;
import org.nestyear.core.season.SeasonFrame;
import org.nestyear.core.season.SeasonWeather;
import org.nestyear.core.stats.Quantiles;

/**
 * When one plant blooms in each member of an ensemble. A keeper's own date that still lies ahead is a forecast: it
 * moves with the member by the difference in thermal time, and carries an error. A date already past is a fact. Where
 * the keeper has dates of past years, the model that does best on them takes the place of the general sum of warmth.
 */
public final class PlantForecast {
    private static final double HALF = 0.5;

    private final Plant plant;
    private final BloomSettings settings;
    private final LocalDate today;
    private final @Nullable ModelDays model;
    private final double medianIndex;

    /**
     * @param plant the plant
     * @param ensemble this season's members, against whose median the keeper's own date is read; at least one
     * @param today the day of the plan
     * @param past the models of plants with dates of past years
     * @throws IllegalArgumentException if the plant's bloom hangs on such dates and no model was chosen for it
     */
    PlantForecast(Plant plant, BloomSettings settings, List<SeasonWeather> ensemble, LocalDate today, PastBlooms past) {
        this.plant = plant;
        this.settings = settings;
        this.today = today;
        boolean fromPast = plant.bloom() instanceof BloomDates.FromPastDates;
        this.model = past.find(plant)
                .filter(days -> fromPast || days.past().isFitted())
                .orElse(null);
        if (model == null && fromPast) {
            throw new IllegalArgumentException("no model was chosen for the bloom of " + plant.name());
        }
        double[] indices = ensemble.stream().mapToDouble(this::modelIndex).toArray();
        this.medianIndex = Quantiles.of(indices, HALF);
    }

    /** The plant. */
    public Plant plant() {
        return plant;
    }

    /** True when bloom has begun by today, so that its date is a fact without error. */
    public boolean isObserved() {
        return plant.bloom() instanceof BloomDates.Dated dated && !dated.first().isAfter(today);
    }

    /** Standard error of the middle of bloom, d: none once bloom has begun. */
    public double errorDays() {
        if (model != null && plant.bloom() instanceof BloomDates.FromPastDates) {
            return model.past().choice().errorDays();
        }
        return isObserved() ? 0 : settings.errorDays();
    }

    /** Standard deviation of the bloom curve, d. */
    public double sdDays() {
        if (plant.bloom() instanceof BloomDates.Dated dated) {
            double span = dated.last().toEpochDay() - dated.first().toEpochDay();
            return Math.max(1, span / settings.spanSds());
        }
        if (plant.bloom() instanceof BloomDates.ThermalTime sum) {
            return Math.max(1, sum.daysOpen() / settings.spanSds());
        }
        Integer told = ((BloomDates.FromPastDates) plant.bloom()).daysOpen();
        return told == null ? settings.sdDays() : Math.max(1, told / settings.spanSds());
    }

    /** The middle of bloom in a member, as an index of that member's days. */
    public double middle(SeasonWeather member) {
        if (plant.bloom() instanceof BloomDates.Dated dated) {
            double own = (dated.first().toEpochDay() + dated.last().toEpochDay()) / 2.0
                    - member.date(0).toEpochDay();
            return isObserved() ? own : own + shift(member);
        }
        return modelIndex(member);
    }

    /** Days by which this plant's dates fall later in a member than in the ensemble's middle. */
    public double shift(SeasonWeather member) {
        return isObserved() ? 0 : modelIndex(member) - medianIndex;
    }

    private double modelIndex(SeasonWeather member) {
        if (model != null) {
            return model.index(member);
        }
        SeasonFrame frame = member.frame();
        if (plant.bloom() instanceof BloomDates.ThermalTime sum) {
            LocalDate start = sum.start().atYear(frame.year());
            return ThermalDate.of(member, member.index(start), sum.baseC(), sum.degreeDays());
        }
        LocalDate start = frame.ofDayOfYear(settings.startDay());
        return ThermalDate.of(member, member.index(start), settings.baseC(), settings.sum());
    }
}
