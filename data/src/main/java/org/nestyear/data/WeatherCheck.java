package org.nestyear.data;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A weather table read to its end.
 *
 * @param file the days that could be read, or null when there were none
 * @param faults what is wrong, in order of line, at most {@link #MOST_FAULTS}
 * @param moreFaults how many further faults were counted but not kept
 */
public record WeatherCheck(@Nullable WeatherFile file, List<DataFault> faults, int moreFaults) {
    /** As many faults as anyone will read. */
    public static final int MOST_FAULTS = 50;

    public WeatherCheck {
        faults = List.copyOf(faults);
    }
}
