package org.nestyear.core.bloom;

import java.time.LocalDate;
import java.util.List;
import org.nestyear.core.season.BloomDates;
import org.nestyear.core.season.Plant;
import org.nestyear.core.season.SeasonFrame;
import org.nestyear.core.season.SeasonWeather;
import org.nestyear.core.stats.Quantiles;

/**
 * When one plant blooms in each member of an ensemble. A keeper's own date that still lies ahead is a forecast: it
 * moves with the member by the difference in thermal time, and carries an error. A date already past is a fact.
 */
public final class PlantForecast {
    private static final double HALF = 0.5;

    private final Plant plant;
    private final BloomSettings settings;
    private final LocalDate today;
    private final double medianIndex;

    /**
     * @param plant the plant
     * @param ensemble this season's members, against whose median the keeper's own date is read; at least one
     * @param today the day of the plan
     */
    public PlantForecast(Plant plant, BloomSettings settings, List<SeasonWeather> ensemble, LocalDate today) {
        this.plant = plant;
        this.settings = settings;
        this.today = today;
        double[] indices = ensemble.stream().mapToDouble(this::thermalIndex).toArray();
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
        return isObserved() ? 0 : settings.errorDays();
    }

    /** Standard deviation of the bloom curve, d. */
    public double sdDays() {
        if (plant.bloom() instanceof BloomDates.Dated dated) {
            double span = dated.last().toEpochDay() - dated.first().toEpochDay();
            return Math.max(1, span / settings.spanSds());
        }
        BloomDates.ThermalTime sum = (BloomDates.ThermalTime) plant.bloom();
        return Math.max(1, sum.daysOpen() / settings.spanSds());
    }

    /** The middle of bloom in a member, as an index of that member's days. */
    public double middle(SeasonWeather member) {
        if (plant.bloom() instanceof BloomDates.Dated dated) {
            double own = (dated.first().toEpochDay() + dated.last().toEpochDay()) / 2.0
                    - member.date(0).toEpochDay();
            return isObserved() ? own : own + shift(member);
        }
        return thermalIndex(member);
    }

    /** Days by which this plant's dates fall later in a member than in the ensemble's middle. */
    public double shift(SeasonWeather member) {
        return isObserved() ? 0 : thermalIndex(member) - medianIndex;
    }

    private double thermalIndex(SeasonWeather member) {
        SeasonFrame frame = member.frame();
        if (plant.bloom() instanceof BloomDates.ThermalTime sum) {
            LocalDate start = sum.start().atYear(frame.year());
            return ThermalDate.of(member, member.index(start), sum.baseC(), sum.degreeDays());
        }
        LocalDate start = frame.ofDayOfYear(settings.startDay());
        return ThermalDate.of(member, member.index(start), settings.baseC(), settings.sum());
    }
}
