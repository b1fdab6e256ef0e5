package org.nestyear.core.leafcutter;

import org.nestyear.core.source.ParameterReader;

/**
 * What follows after emergence, as far as it is known.
 *
 * @param maturingDays days from emergence to the first cell of a female
 * @param dailyDeath chance of a nesting female to be lost in a day
 * @param longestNestingDays nesting days that none outlives
 * @param broodDays days from an egg to a bee of the same summer
 * @param eggBaseC base of the sum from egg to prepupa, °C
 * @param eggSum degree-days from egg to prepupa, °C·d
 * @param lastUsefulDay day of the year by which half the females must be out to raise brood
 * @param northLatitudeDeg from this latitude on few of the brood fly the same summer
 */
public record Summer(
        double maturingDays,
        double dailyDeath,
        double longestNestingDays,
        double broodDays,
        double eggBaseC,
        double eggSum,
        double lastUsefulDay,
        double northLatitudeDeg) {
    public static Summer of(ParameterReader parameters) {
        return new Summer(
                parameters.value("maturing_days"),
                parameters.value("nesting_death"),
                parameters.value("nesting_longest_days"),
                parameters.value("egg_days") + parameters.value("larva_days") + parameters.value("cocoon_days"),
                parameters.value("egg_prepupa_base_c"),
                parameters.value("egg_prepupa_sum"),
                parameters.value("last_useful_day"),
                parameters.value("second_north_lat"));
    }

    /** Days a female nests on average: every day the same chance to be lost, up to the longest. */
    public double expectedNestingDays() {
        return (1 - Math.pow(1 - dailyDeath, longestNestingDays)) / dailyDeath;
    }

    /**
     * Days from egg to prepupa at one temperature.
     *
     * @return infinite at the base and below
     */
    public double daysToPrepupa(double celsius) {
        return celsius > eggBaseC ? eggSum / (celsius - eggBaseC) : Double.POSITIVE_INFINITY;
    }
}
