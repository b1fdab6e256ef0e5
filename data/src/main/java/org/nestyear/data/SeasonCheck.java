package org.nestyear.data;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A season file read to its end.
 *
 * @param season what it holds, or null when anything is wrong
 * @param faults what is wrong, those of the file itself in order of line, then those of its weather files
 */
public record SeasonCheck(@Nullable Season season, List<DataFault> faults) {
    public SeasonCheck {
        faults = List.copyOf(faults);
    }
}
