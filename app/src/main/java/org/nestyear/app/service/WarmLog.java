package org.nestyear.app.service;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import org.nestyear.core.leafcutter.WarmthSettings;
import org.nestyear.core.weather.LoggedTemperatures;

/**
 * A log of warmed cells, and what is taken for the time after it.
 *
 * @param thenC the temperature told for the time after it, or the mean of its last day, °C; null when neither is one at
 *     which steady warming is answered
 */
record WarmLog(LoggedTemperatures readings, @Nullable Double thenC) {
    /** Longest gap that a straight line may bridge, hours; numerical. */
    private static final double LONGEST_GAP_HOURS = 24;

    private static final int DAY_HOURS = 24;

    /**
     * Reads it.
     *
     * @throws Refusal if the file is wrong or has a gap of more than a day
     */
    static WarmLog read(WarmQuestion.Logged logged, WarmthSettings settings) {
        LoggedTemperatures readings = TemperatureLog.read(logged.file(), LONGEST_GAP_HOURS);
        double[] hours = readings.hourlyC();
        Double then = logged.thenC();
        if (then == null && hours.length > 0) {
            then = Arrays.stream(hours, Math.max(0, hours.length - DAY_HOURS), hours.length)
                    .average()
                    .orElse(Double.NaN);
            then = settings.answersSteady(then) ? then : null;
        }
        return new WarmLog(readings, then);
    }

    double[] hourlyC() {
        return readings.hourlyC();
    }
}
