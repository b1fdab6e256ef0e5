package org.nestyear.app.service;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.nestyear.core.count.Tally;

/**
 * What a tally says of the true share.
 *
 * @param counted the tally, or one tally for each of several nests
 * @param level coverage of the intervals, above 0 and below 1
 * @param against another tally to compare with, or null
 */
public record IntervalQuestion(
        List<Tally> counted, double level, @Nullable Tally against) {
    public IntervalQuestion {
        counted = List.copyOf(counted);
        if (counted.isEmpty()) {
            throw new IllegalArgumentException("nothing is counted");
        }
    }

    /** True when the cells are told nest by nest. */
    public boolean isByNest() {
        return counted.size() > 1;
    }
}
