package org.nestyear.app.service;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.nestyear.core.place.Site;
import org.nestyear.core.species.BeeKind;

/**
 * Which way should a front look?
 *
 * @param house where the house stands
 * @param clock the day it is, for a file that names none
 * @param dates days to look at; every week of the bees' flight if none
 * @param bees the kind of bee, or null for that of the season's first batch
 * @param excessC how much warmer than the air a tunnel gets for each 100 W/m² on the front, °C, or null for the
 *     catalogue's
 */
public record FacingQuestion(
        House house,
        LocalDate clock,
        List<LocalDate> dates,
        @Nullable BeeKind bees,
        @Nullable Double excessC) {
    public FacingQuestion {
        dates = List.copyOf(dates);
    }

    /** Where a house stands, and what the weather is there. */
    public sealed interface House {}

    /** The site and the weather of a season file. */
    public record OfSeason(Path file) implements House {}

    /**
     * A place told by itself.
     *
     * @param weather a station's table of daily weather
     */
    public record OfPlace(Site site, Path weather) implements House {}
}
