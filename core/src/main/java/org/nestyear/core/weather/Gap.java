package org.nestyear.core.weather;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;

/** A run of days without both temperatures, both ends included. */
public record Gap(LocalDate from, LocalDate to) {
    /** How many days are missing, at least one. */
    public long days() {
        return ChronoUnit.DAYS.between(from, to) + 1;
    }
}
