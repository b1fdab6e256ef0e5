package org.nestyear.core.release;

import java.time.LocalDate;
import java.util.List;

/**
 * What counting the occupied tunnels in the dark says of the females that nest.
 *
 * @param counts tunnels seen occupied, evening by evening
 * @param expected females nesting that were to be expected before the count
 * @param nesting females nesting after it
 * @param lessChance chance of a mean count no higher than this one, 0 to 1, by what was to be expected
 * @param cellsStill cells that they still build, were there tunnels enough
 * @param tunnelsStill tunnels that they still begin
 */
public record TorchCount(
        LocalDate released,
        LocalDate on,
        List<Integer> counts,
        Band expected,
        Band nesting,
        double lessChance,
        Band cellsStill,
        Band tunnelsStill) {
    public TorchCount {
        counts = List.copyOf(counts);
    }

    /** A number and the band that holds it in eight cases of ten. */
    public record Band(double low, double middle, double high) {}
}
