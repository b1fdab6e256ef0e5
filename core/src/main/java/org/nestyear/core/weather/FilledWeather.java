package org.nestyear.core.weather;

import java.util.List;

/**
 * A record without gaps in temperature, and what had to be filled for it.
 *
 * @param weather every day from first to last with both temperatures
 * @param fillings the runs of filled days in order of date, empty when none was needed
 */
public record FilledWeather(WeatherRecord weather, List<Filling> fillings) {
    public FilledWeather {
        fillings = List.copyOf(fillings);
    }
}
