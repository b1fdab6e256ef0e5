package org.nestyear.app.service;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.nestyear.core.season.Goal;

/**
 * What may differ from the season file.
 *
 * @param clock the day it is; the day of the plan when neither the file nor {@code today} names one
 * @param today the day of the plan whatever the file says, or null
 * @param goal the aim whatever the file says, or null
 */
public record PlanRequest(
        LocalDate clock,
        @Nullable LocalDate today,
        @Nullable Goal goal) {
    /** The season as the file has it. */
    public static PlanRequest asWritten(LocalDate clock) {
        return new PlanRequest(clock, null, null);
    }
}
