package org.nestyear.core.nesting;

import org.nestyear.core.source.ParameterReader;

/**
 * How females of a species live, settle and build.
 *
 * @param prenestingDays whole days from emergence to the first nest
 * @param death share of females dying a day
 * @param deathFlightless added for each flightless day in a row beyond the grace
 * @param graceDays flightless days in a row without extra deaths
 * @param deathMost most that can die in a day
 * @param settling share of females that stay when food is full
 * @param foodWeight part of settling that depends on food, 0 to 1
 * @param lookDays days of food a female judges by
 * @param daughterShare share of daughters when a female begins
 * @param daughterFall how much that share falls a day
 * @param cellSurvival share of cells that give an adult, parasites apart
 * @param parasitesStart share of cells lost to parasites early in the season
 * @param parasitesEnd and late
 * @param parasitesMiddle days after the middle of target bloom when it is half way
 * @param parasitesScale days, steepness of that rise
 * @param maleDeath share of males dying a day
 */
public record NestingSettings(
        int prenestingDays,
        double death,
        double deathFlightless,
        double graceDays,
        double deathMost,
        double settling,
        double foodWeight,
        int lookDays,
        double daughterShare,
        double daughterFall,
        double cellSurvival,
        double parasitesStart,
        double parasitesEnd,
        double parasitesMiddle,
        double parasitesScale,
        double maleDeath) {
    public static NestingSettings of(ParameterReader parameters) {
        return new NestingSettings(
                (int) Math.round(parameters.value("prenesting_days")),
                parameters.value("death"),
                parameters.value("death_flightless"),
                parameters.value("flightless_grace_days"),
                parameters.value("death_most"),
                parameters.value("settling"),
                parameters.value("settling_food_weight"),
                (int) Math.round(parameters.value("settling_look_days")),
                parameters.value("daughter_share"),
                parameters.value("daughter_fall"),
                parameters.value("cell_survival"),
                parameters.value("parasitism_start"),
                parameters.value("parasitism_end"),
                parameters.value("parasitism_middle_days"),
                parameters.value("parasitism_scale_days"),
                parameters.value("male_death"));
    }

    /** Share of cells lost to parasites when built {@code days} after the middle of target bloom. */
    public double parasitism(double days) {
        double rise = 1 / (1 + Math.exp(-(days - parasitesMiddle) / parasitesScale));
        return parasitesStart + (parasitesEnd - parasitesStart) * rise;
    }
}
