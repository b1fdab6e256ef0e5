package org.nestyear.app.picture;

import java.time.LocalDate;

/**
 * Something that has a date of its own, shown on a line beneath the curve.
 *
 * @param mark its shape, different for each thing so that nothing hangs on colour
 * @param words what is written beside it
 * @param from first day of its span
 * @param at the day it names; within the span
 * @param to last day of its span
 */
public record Lane(Mark mark, String words, LocalDate from, LocalDate at, LocalDate to) {
    public Lane {
        if (at.isBefore(from) || to.isBefore(at)) {
            throw new IllegalArgumentException(
                    "\"" + words + "\" needs its day within its span, got " + from + ", " + at + ", " + to);
        }
    }

    /** The shapes a lane can be drawn as. */
    public enum Mark {
        /** A striped bar from first to last day. */
        BAR,
        /** A thin line from first to last day, with a stop at each end. */
        BRACKET,
        /** A triangle on the day, with a thin line for the span. */
        TRIANGLE,
        /** A diamond on the day, with a thin line for the span. */
        DIAMOND,
        /** A ring on the day, with a broken line up through the curve. */
        RING
    }
}
