package org.nestyear.app.service;

import java.nio.file.Path;
import java.time.LocalDate;
import org.nestyear.core.species.Species;

/**
 * Cocoons kept cold at one temperature, then put out.
 *
 * @param chillDays days in the cold, 0 or more
 * @param chillC temperature of the cold store, °C
 * @param then what they meet when put out
 */
public record EmergeQuestion(Species species, double chillDays, double chillC, Then then) {
    /** What the cocoons meet when put out. */
    public sealed interface Then {}

    /** One temperature, °C, for as long as it takes. */
    public record Steady(double celsius) implements Then {}

    /**
     * The weather of a station.
     *
     * @param file a table of daily weather
     * @param out the day they are put out, at its first hour
     * @param latitudeDeg degrees north, for the length of the day
     */
    public record Weather(Path file, LocalDate out, double latitudeDeg) implements Then {}
}
