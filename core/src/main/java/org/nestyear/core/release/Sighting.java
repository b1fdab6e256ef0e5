package org.nestyear.core.release;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * How usual it is that nothing more has been seen by a day, taking it that a keeper notices a tenth of the bees or nests.
 *
 * @param seen what has been seen
 * @param released day on which the cocoons were put out
 * @param on the day asked about
 * @param chance chance that no more would be seen by the end of that day, 0 to 1
 * @param early day by which the next is to be seen in one case of ten, or null if not within the days looked at
 * @param middle and in half the cases
 * @param unusual first day on which seeing no more would be unusual: under one case in twenty
 * @param flightless days without flight among the last seven, by the weather known
 * @param settlers females expected to settle in the end
 */
public record Sighting(
        Seen seen,
        LocalDate released,
        LocalDate on,
        double chance,
        @Nullable LocalDate early,
        @Nullable LocalDate middle,
        @Nullable LocalDate unusual,
        int flightless,
        double settlers) {}
