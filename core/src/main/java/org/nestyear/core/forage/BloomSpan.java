package org.nestyear.core.forage;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;

/** Bloom of one year with straight sides: nothing before {@code from}, full at {@code peak}, nothing after {@code to}. */
public record BloomSpan(LocalDate from, LocalDate peak, LocalDate to) {
    public BloomSpan {
        if (peak.isBefore(from) || to.isBefore(peak)) {
            throw new IllegalArgumentException("bloom must run from, peak, to, got " + from + ", " + peak + ", " + to);
        }
    }

    /** Share of full bloom on a day, 0 to 1. */
    public double height(LocalDate day) {
        if (day.isBefore(from) || day.isAfter(to)) {
            return 0;
        }
        boolean rising = day.isBefore(peak);
        // A day more on each side, so that the first and the last day have flowers.
        double side = 1.0 + ChronoUnit.DAYS.between(rising ? from : peak, rising ? peak : to);
        return 1 - Math.abs(ChronoUnit.DAYS.between(day, peak)) / side;
    }
}
