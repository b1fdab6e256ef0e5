package org.nestyear.data;

import java.util.List;
import org.nestyear.core.losses.Cause;
import org.nestyear.core.losses.OpenedNest;

/**
 * A tally of opened nests as it stands in a keeper's table.
 *
 * @param nests one for each line
 * @param looked the causes that have a column
 */
public record OpenedNests(List<OpenedNest> nests, List<Cause> looked) {
    public OpenedNests {
        nests = List.copyOf(nests);
        looked = List.copyOf(looked);
    }
}
