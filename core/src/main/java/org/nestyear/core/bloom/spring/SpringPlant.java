package org.nestyear.core.bloom.spring;

import org.nestyear.core.source.ParameterReader;

/**
 * One indicator plant of the spring index: weights of its two scores.
 *
 * @param leafDays weight of the days since 1 January in the leaf score
 * @param leafEvents weight of the count of warm spells
 * @param leafRecent weight of the warmth of today and the two counted days before, 1/(°F·h)
 * @param leafEarlier weight of the warmth of the counted days five to seven back, 1/(°F·h)
 * @param leafDelayDays added to the day on which the leaf score is reached
 * @param bloomDays weight of the days since leaf in the bloom score
 * @param bloomHours weight of the warmth since leaf, 1/(°F·h)
 */
record SpringPlant(
        double leafDays,
        double leafEvents,
        double leafRecent,
        double leafEarlier,
        int leafDelayDays,
        double bloomDays,
        double bloomHours) {
    /** The plant whose rows begin with {@code name}. */
    static SpringPlant of(ParameterReader parameters, String name) {
        return new SpringPlant(
                parameters.value(name + "_leaf_days"),
                parameters.value(name + "_leaf_events"),
                parameters.value(name + "_leaf_recent"),
                parameters.value(name + "_leaf_earlier"),
                (int) parameters.value(name + "_leaf_delay"),
                parameters.value(name + "_bloom_days"),
                parameters.value(name + "_bloom_hours"));
    }
}
