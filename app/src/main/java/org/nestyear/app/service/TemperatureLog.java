package org.nestyear.app.service;

import java.nio.file.Path;
import org.nestyear.core.weather.LogGap;
import org.nestyear.core.weather.LoggedTemperatures;
import org.nestyear.data.DataFault;
import org.nestyear.data.TemperatureLogCsv;
import org.nestyear.data.TextSource;

/** Reads a keeper's log of temperatures. */
final class TemperatureLog {
    private TemperatureLog() {}

    /**
     * Reads one.
     *
     * @param longestGapHours longest gap that a straight line may bridge
     * @throws Refusal if the file is wrong or has a longer gap
     */
    static LoggedTemperatures read(Path file, double longestGapHours) {
        LoggedTemperatures readings;
        try {
            readings = TemperatureLogCsv.read(TextSource.ofFile(file));
        } catch (DataFault fault) {
            throw Refusal.of(fault);
        }
        for (LogGap gap : readings.gaps()) {
            if (gap.hours() > longestGapHours) {
                throw new Refusal(
                        Refusal.Kind.NO_ANSWER,
                        "NY-LOG-GAP",
                        file.toString(),
                        "Between " + gap.from() + " and " + gap.to() + " the log has no reading for "
                                + Wording.number(gap.hours(), 0)
                                + " hours, and what the bees met in a gap of more than "
                                + Wording.number(longestGapHours, 0) + " hours is not guessed.",
                        "Maybe fill in readings of another thermometer in the same place.");
            }
        }
        return readings;
    }
}
