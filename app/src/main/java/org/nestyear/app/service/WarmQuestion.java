package org.nestyear.app.service;

import java.nio.file.Path;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.nestyear.core.species.Species;

/**
 * Wintered leafcutter cells, and the warmth they are given.
 *
 * @param before warmth they have had already
 * @param hold a break in steady warming, or null
 * @param storedDays days in the cold store, or null when not told
 * @param latitudeDeg degrees north, or null when not told
 */
public record WarmQuestion(
        Species species,
        Warmth warmth,
        Before before,
        @Nullable Hold hold,
        @Nullable Double storedDays,
        @Nullable Double latitudeDeg) {
    /** How they are warmed. */
    public sealed interface Warmth {}

    /** One temperature, °C, from a day on. */
    public record Steady(double celsius, LocalDate start) implements Warmth {}

    /** One temperature, °C, begun so that half the females are out by a day. */
    public record ReadyBy(double celsius, LocalDate date) implements Warmth {}

    /**
     * What a thermometer among the cells wrote down since warming began.
     *
     * @param thenC temperature after the log, °C, or null to go on as on its last day
     */
    public record Logged(Path file, @Nullable Double thenC) implements Warmth {}

    /**
     * Outdoors in the house.
     *
     * @param file a table of daily weather
     * @param out the day they are put out
     */
    public record Outdoors(Path file, LocalDate out, double latitudeDeg) implements Warmth {}

    /** Warmth had before they came. */
    public sealed interface Before {}

    /** None: they come from the cold store. */
    public record Fresh() implements Before {}

    /** So many days at one temperature, °C, or null for that of the calendar. */
    public record Warmed(double days, @Nullable Double celsius) implements Before {}

    /** So many days to the first bees, as the seller says, at one temperature, °C, or null for that of the calendar. */
    public record FlightIn(double days, @Nullable Double celsius) implements Before {}

    /**
     * A break in warming.
     *
     * @param celsius temperature while held, °C
     * @param pulseHours hours a day at 20 to 25 °C in between, 0 for none
     */
    public record Hold(LocalDate from, double days, double celsius, double pulseHours) {}
}
