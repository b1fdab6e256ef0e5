package org.nestyear.app.web;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import org.jspecify.annotations.Nullable;
import org.nestyear.core.release.Outlook;
import org.nestyear.core.season.BloomDates;
import org.nestyear.core.season.Plant;

/** First, middle and last day of a plant's bloom, as far as they are told or expected. */
record BloomSpan(LocalDate from, LocalDate middle, LocalDate to) {
    /** The keeper's own dates; for a bloom worked out from the weather, its days open (as
     * told, else as expected) laid around the expected middle. */
    static BloomSpan of(Plant plant, Outlook outlook) {
        if (plant.bloom() instanceof BloomDates.Dated dated) {
            long half = ChronoUnit.DAYS.between(dated.first(), dated.last()) / 2;
            return new BloomSpan(dated.first(), dated.first().plusDays(half), dated.last());
        }
        LocalDate middle = outlook.targetBloom().middle();
        Integer told = daysOpen(plant.bloom());
        long open = told == null
                ? 2 * ChronoUnit.DAYS.between(middle, outlook.targetBloomEnd().middle())
                : told;
        LocalDate from = middle.minusDays(open / 2);
        return new BloomSpan(from, middle, from.plusDays(Math.max(0, open - 1)));
    }

    private static @Nullable Integer daysOpen(BloomDates bloom) {
        if (bloom instanceof BloomDates.ThermalTime warmth) {
            return warmth.daysOpen();
        }
        return bloom instanceof BloomDates.FromPastDates past ? past.daysOpen() : null;
    }
}
