package org.nestyear.core.forage;

import java.time.LocalDate;
import java.util.List;

/**
 * Weeks in a row that are short or probably so.
 *
 * @param weeks the weeks
 * @param suggestions plants that bloom then and suit the region, best first; empty where the region is not known
 * @param littleUse plants in bloom then whose flowers give little: hybrids and doubles
 */
public record ForageGap(List<ForageWeek> weeks, List<Suggestion> suggestions, List<GardenPlant> littleUse) {
    public ForageGap {
        weeks = List.copyOf(weeks);
        suggestions = List.copyOf(suggestions);
        littleUse = List.copyOf(littleUse);
    }

    /** Its first day. */
    public LocalDate from() {
        return weeks.get(0).from();
    }

    /** Its last day. */
    public LocalDate to() {
        return weeks.get(weeks.size() - 1).to();
    }

    /** Cells wanted in it. */
    public double cells() {
        return weeks.stream().mapToDouble(ForageWeek::cells).sum();
    }

    /** Cells the flowers can feed in it. */
    public Band supply() {
        return weeks.stream().map(ForageWeek::supply).reduce(Band.NONE, Band::plus);
    }

    /** True when at least one of its weeks is short even where flowers give as much as they may. */
    public boolean isSure() {
        return weeks.stream().anyMatch(week -> week.fed() == Fed.SHORT);
    }
}
