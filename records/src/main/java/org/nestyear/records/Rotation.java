package org.nestyear.records;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.temporal.TemporalAdjusters;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;

/**
 * Which daily copies are kept: the newest of each of the last seven days that have one, of the last four weeks (from Monday)
 * and of the last twelve months. Days, weeks and months without a copy do not count, so that a keeper who opens the program
 * once a month keeps a year of copies too.
 */
final class Rotation {
    private static final int DAYS = 7;
    private static final int WEEKS = 4;
    private static final int MONTHS = 12;

    private Rotation() {}

    /** The days to keep, of those that have a copy; the newest is always among them. */
    static Set<LocalDate> keep(Collection<LocalDate> copies) {
        List<LocalDate> newestFirst =
                copies.stream().distinct().sorted(Comparator.reverseOrder()).toList();
        Set<LocalDate> kept = new TreeSet<>();
        keepNewestOf(newestFirst, day -> day, DAYS, kept);
        keepNewestOf(newestFirst, day -> day.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY)), WEEKS, kept);
        keepNewestOf(newestFirst, YearMonth::from, MONTHS, kept);
        return kept;
    }

    private static <S> void keepNewestOf(
            List<LocalDate> newestFirst, Function<LocalDate, S> spanOf, int spans, Set<LocalDate> kept) {
        Set<S> seen = new HashSet<>();
        for (LocalDate day : newestFirst) {
            if (seen.size() < spans && seen.add(spanOf.apply(day))) {
                kept.add(day);
            }
        }
    }
}
