package org.nestyear.app.service;

import java.nio.file.Path;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * What is asked of the flowers in reach.
 *
 * @param file the season file
 * @param request the day and the aim of the plan
 * @param told cells told by the keeper in place of the plan's, or null
 */
public record FlowersQuestion(
        Path file, PlanRequest request, @Nullable ToldCells told) {
    /**
     * Cells a day in a run of days.
     *
     * @param cells cells that all bees together build a day, 0 or more
     * @param from the first day of nesting
     * @param to the last, not before the first
     */
    public record ToldCells(double cells, LocalDate from, LocalDate to) {}
}
