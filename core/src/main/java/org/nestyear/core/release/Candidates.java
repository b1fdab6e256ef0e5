package org.nestyear.core.release;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;

/** The dates of release that are tried: every day from first to last. */
record Candidates(LocalDate first, LocalDate last) {
    Candidates {
        if (last.isBefore(first)) {
            throw new IllegalArgumentException("no date lies between " + first + " and " + last);
        }
    }

    int count() {
        return (int) ChronoUnit.DAYS.between(first, last) + 1;
    }

    LocalDate date(int i) {
        return first.plusDays(i);
    }

    /** The number of a date, which may lie outside. */
    int index(LocalDate date) {
        return (int) ChronoUnit.DAYS.between(first, date);
    }

    /** The number of the candidate nearest to a date. */
    int nearest(LocalDate date) {
        return Math.max(0, Math.min(count() - 1, index(date)));
    }
}
