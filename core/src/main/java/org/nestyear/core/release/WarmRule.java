package org.nestyear.core.release;

import org.nestyear.core.bloom.FoodCurve;
import org.nestyear.core.season.SeasonWeather;
import org.nestyear.core.source.ParameterReader;

/**
 * The trade's rule of thumb made precise with what a keeper can know on the day: warm enough on most of the last
 * days, bloom open in reach, and the minimum of chill. Basis: common practice, no source.
 *
 * @param warmC a day counts as warm from this maximum, °C
 * @param warmDays warm days wanted
 * @param ofDays among so many last days
 * @param chillDays least days of chill
 * @param openFood food in reach from which bloom counts as open, 0 to 1
 */
record WarmRule(double warmC, int warmDays, int ofDays, double chillDays, double openFood) {
    static WarmRule of(ParameterReader parameters) {
        return new WarmRule(
                parameters.value("rule_warm_c"),
                (int) parameters.value("rule_warm_days"),
                (int) parameters.value("rule_of_days"),
                parameters.value("chill_enough_days"),
                parameters.value("rule_open_food"));
    }

    /** The first candidate on which the rule says yes in a member; the last candidate if it never does. */
    int firstYes(MemberModel member, int course, Candidates candidates) {
        FoodCurve food = member.food(course);
        int first = member.weather().index(candidates.first());
        for (int i = 0; i < candidates.count(); i++) {
            int d = first + i;
            if (warmDays(member.weather(), d) >= warmDays
                    && food.food(d) >= openFood
                    && member.chillDays(d) >= chillDays) {
                return i;
            }
        }
        return candidates.count() - 1;
    }

    private int warmDays(SeasonWeather member, int day) {
        int warm = 0;
        for (int d = Math.max(0, day - ofDays); d < day; d++) {
            if (member.maxC()[d] >= warmC) {
                warm++;
            }
        }
        return warm;
    }
}
