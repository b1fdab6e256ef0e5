package org.nestyear.app.service;

import java.nio.file.Path;
import java.util.List;

/**
 * When a plant blooms, from its own dates and the weather of a station.
 *
 * @param weather a table of daily weather
 * @param latitudeDeg degrees north
 * @param observed a table of bloom dates, one a year
 * @param years years to predict, in any order; empty for every year of the weather without a date
 */
public record BloomQuestion(Path weather, double latitudeDeg, Path observed, List<Integer> years) {
    public BloomQuestion {
        years = List.copyOf(years);
    }
}
