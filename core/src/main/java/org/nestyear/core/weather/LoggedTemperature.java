package org.nestyear.core.weather;

import java.time.LocalDateTime;

/**
 * One reading of a thermometer that writes down what it shows.
 *
 * @param time by the logger's own clock, which is taken not to jump
 * @param celsius °C, finite
 */
public record LoggedTemperature(LocalDateTime time, double celsius) {
    public LoggedTemperature {
        if (!Double.isFinite(celsius)) {
            throw new IllegalArgumentException("the reading at " + time + " is " + celsius + " °C");
        }
    }
}
