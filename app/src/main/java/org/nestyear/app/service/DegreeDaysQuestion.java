package org.nestyear.app.service;

import java.nio.file.Path;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * Which warmth is to be summed.
 *
 * @param baseC temperature above which warmth counts, °C
 * @param capC temperature above which it counts no more, °C, or null
 * @param over the days
 */
public record DegreeDaysQuestion(double baseC, @Nullable Double capC, Over over) {

    /** One day, or a run of days. */
    public sealed interface Over {}

    /** One day by its lowest and highest temperature, °C. */
    public record OneDay(double minC, double maxC) implements Over {}

    /** The days of a table of daily weather, both ends included. */
    public record Table(Path file, LocalDate from, LocalDate to) implements Over {}
}
