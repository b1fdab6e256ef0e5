package org.nestyear.data;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * Which day a plan is made for: the one asked for, else the one the season file names, else the clock's.
 *
 * @param asked the day the keeper asked for, or null
 * @param clock the day it is
 */
public record DayOfPlan(@Nullable LocalDate asked, LocalDate clock) {
    /** The day it is, unless the season file names one. */
    public static DayOfPlan of(LocalDate clock) {
        return new DayOfPlan(null, clock);
    }

    LocalDate choose(@Nullable LocalDate inFile) {
        if (asked != null) {
            return asked;
        }
        return inFile == null ? clock : inFile;
    }
}
