package org.nestyear.core.weather;

import java.time.LocalDate;

/**
 * The weather of one day at a station. Values that were not measured are NaN, never zero.
 *
 * @param date the thermometer day
 * @param minC lowest air temperature, °C, or NaN
 * @param maxC highest air temperature, °C, or NaN; not below {@code minC}
 * @param rainMm rain and melted snow, mm, or NaN
 * @param windMs mean wind speed, m/s, or NaN
 * @param radiationMjM2 solar radiation on the level, MJ/m², or NaN
 */
public record DailyWeather(
        LocalDate date, double minC, double maxC, double rainMm, double windMs, double radiationMjM2) {
    public DailyWeather {
        if (minC > maxC) {
            throw new IllegalArgumentException("minimum " + minC + " °C is above maximum " + maxC + " °C on " + date);
        }
    }

    /** True when both temperatures were measured. */
    public boolean hasTemperatures() {
        return !Double.isNaN(minC) && !Double.isNaN(maxC);
    }
}
