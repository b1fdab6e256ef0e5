package org.nestyear.data;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.nestyear.core.weather.WeatherRecord;

/**
 * What a daily weather table holds.
 *
 * @param name name of the file as shown in messages
 * @param record its days, in °C, mm, m/s and MJ/m²
 * @param columns headings in use, in our own names, each with the unit it was read in
 * @param ignored headings that were not used
 * @param lines line of each day in the file, from 1
 * @param notes sentences for the keeper on what was left out or taken differently, mostly none
 */
public record WeatherFile(
        String name,
        WeatherRecord record,
        List<String> columns,
        List<String> ignored,
        Map<LocalDate, Integer> lines,
        List<String> notes) {
    public WeatherFile {
        notes = List.copyOf(notes);
        columns = List.copyOf(columns);
        ignored = List.copyOf(ignored);
        lines = Map.copyOf(lines);
    }

    /** A table read as it stands, with nothing to note. */
    public WeatherFile(
            String name,
            WeatherRecord record,
            List<String> columns,
            List<String> ignored,
            Map<LocalDate, Integer> lines) {
        this(name, record, columns, ignored, lines, List.of());
    }

    /**
     * Where a day stands.
     *
     * @throws IllegalArgumentException if the file does not hold it
     */
    public Position position(LocalDate date) {
        Integer line = lines.get(date);
        if (line == null) {
            throw new IllegalArgumentException(name + " has no row for " + date);
        }
        return new Position(name, line, 1);
    }
}
