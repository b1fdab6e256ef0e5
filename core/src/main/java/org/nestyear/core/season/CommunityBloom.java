package org.nestyear.core.season;

import java.time.LocalDate;

/**
 * All other bloom in reach, as a curve with straight sides: nothing before {@code from}, {@code level} at
 * {@code peak}, nothing after {@code to}.
 *
 * @param level height at the peak, 0 to 1, where 1 feeds every bee that flies
 */
public record CommunityBloom(LocalDate from, LocalDate peak, LocalDate to, double level) {
    public CommunityBloom {
        if (peak.isBefore(from) || to.isBefore(peak)) {
            throw new IllegalArgumentException(
                    "other bloom must run from, peak, to in this order, got " + from + ", " + peak + ", " + to);
        }
        if (!(level >= 0 && level <= 1)) {
            throw new IllegalArgumentException("the level of other bloom is " + level + ", outside 0 to 1");
        }
    }
}
