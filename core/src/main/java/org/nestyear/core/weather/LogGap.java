package org.nestyear.core.weather;

import java.time.Duration;
import java.time.LocalDateTime;

/**
 * A time without readings inside a log.
 *
 * @param from last reading before it
 * @param to first reading after it
 */
public record LogGap(LocalDateTime from, LocalDateTime to) {
    /** Hours without a reading. */
    public double hours() {
        return Duration.between(from, to).toSeconds() / (60.0 * 60.0);
    }
}
