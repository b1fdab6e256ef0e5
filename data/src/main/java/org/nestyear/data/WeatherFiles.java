package org.nestyear.data;

import java.util.List;

/** Reads a file of daily weather in whichever of the known formats it is written. */
public final class WeatherFiles {
    private WeatherFiles() {}

    /**
     * Reads a file without a fault.
     *
     * @throws DataFault the first thing that is wrong with it
     */
    public static WeatherFile read(TextSource source) {
        WeatherCheck check = check(source);
        if (!check.faults().isEmpty()) {
            throw check.faults().get(0);
        }
        WeatherFile file = check.file();
        if (file == null) {
            throw new IllegalStateException("a table without a fault must hold a day");
        }
        return file;
    }

    /** Reads a file to its end and lists everything that is wrong with it. */
    public static WeatherCheck check(TextSource source) {
        SourceText text;
        try {
            text = SourceText.read(source);
        } catch (DataFault fault) {
            return new WeatherCheck(null, List.of(fault), 0);
        }
        GhcnLayout layout = GhcnLayout.of(text);
        return layout == null ? WeatherCsv.check(source) : GhcnDaily.check(text, layout);
    }
}
