package org.nestyear.core.forage;

import java.time.MonthDay;

/**
 * What a bloom word means in a region: bloom begins, is fullest and ends.
 *
 * @param moves how far it follows latitude and height: 1 in full, 0 not at all
 */
public record WordDates(MonthDay from, MonthDay peak, MonthDay to, double moves) {
    public WordDates {
        if (!from.isBefore(peak) || !peak.isBefore(to)) {
            throw new IllegalArgumentException("bloom must run from " + from + " over " + peak + " to " + to);
        }
        if (!(moves >= 0 && moves <= 1)) {
            throw new IllegalArgumentException("a word moves by 0 to 1, got " + moves);
        }
    }
}
