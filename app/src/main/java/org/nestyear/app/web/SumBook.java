package org.nestyear.app.web;

import java.util.List;
import java.util.Optional;
import org.nestyear.app.web.Sum.Group;

/** All small calculators, by the keeper's task. A new one is a row in one of the lists named here. */
final class SumBook {
    private static final List<Group> GROUPS = List.of(
            new Group("When", "Dates, warmth and cold.", TimeSums.all()),
            new Group("Counting", "What a few tell of all.", CountingSums.all()),
            new Group("Opening", "Who is in the tunnel, and what was lost.", OpeningSums.all()),
            new Group("Making", "Rinses, mud and room.", MakingSums.all()),
            new Group("Place", "Where the sun stands.", PlaceSums.all()),
            new Group("Years", "How a stock goes on.", YearSums.all()));

    private SumBook() {}

    static List<Group> groups() {
        return GROUPS;
    }

    /** The calculator at this address. */
    static Optional<Sum> find(String slug) {
        return all().stream().filter(sum -> sum.slug().equals(slug)).findFirst();
    }

    static List<Sum> all() {
        return GROUPS.stream().flatMap(group -> group.sums().stream()).toList();
    }
}
