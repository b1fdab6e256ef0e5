package org.nestyear.app.service;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * A date with its range.
 *
 * @param early first day it may be, or null when it does not come in what is known
 * @param late last day it may be, or null when it may not come in what is known
 */
public record DateBand(@Nullable LocalDate early, @Nullable LocalDate late) {
    /** True when both ends are known. */
    public boolean isComplete() {
        return early != null && late != null;
    }
}
