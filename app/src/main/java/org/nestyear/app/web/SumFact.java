package org.nestyear.app.web;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.nestyear.core.advice.Unit;

/**
 * One row of the small table under an answer: where it stands in the command's JSON and how it is shown.
 *
 * @param label what it is
 * @param paths where its numbers stand, one or, from low to high, two; members of objects behind a slash
 * @param unit its unit, or null for a word or a date
 * @param decimals decimals shown
 * @param suffix a unit that is the same in both systems, or empty
 */
record SumFact(String label, List<String> paths, @Nullable Unit unit, int decimals, String suffix) {
    SumFact {
        paths = List.copyOf(paths);
    }

    /** A word or a date. */
    static SumFact word(String label, String path) {
        return new SumFact(label, List.of(path), null, 0, "");
    }

    /** Two dates, the earlier first. */
    static SumFact dates(String label, String early, String late) {
        return new SumFact(label, List.of(early, late), null, 0, "");
    }

    /** A number in a unit that both systems share. */
    static SumFact number(String label, String path, int decimals, String suffix) {
        return new SumFact(label, List.of(path), Unit.NUMBER, decimals, suffix);
    }

    static SumFact of(String label, String path, Unit unit, int decimals) {
        return new SumFact(label, List.of(path), unit, decimals, "");
    }

    /** From low to high. */
    static SumFact span(String label, String low, String high, Unit unit, int decimals) {
        return new SumFact(label, List.of(low, high), unit, decimals, "");
    }
}
