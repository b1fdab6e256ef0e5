package org.nestyear.app.service;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.nestyear.core.season.SeasonInputs;
import org.nestyear.core.weather.Gap;

/**
 * What a file holds and what is wrong with it.
 *
 * @param file its name
 * @param kind {@code weather} or {@code season}
 * @param weather its days, or those of the files a season names; null when none could be read
 * @param season the season, or null for a weather file and for a season with faults
 * @param faults what is wrong, by line
 * @param moreFaults faults counted but not listed
 */
public record FileReport(
        String file,
        String kind,
        @Nullable Days weather,
        @Nullable SeasonInputs season,
        List<Refusal> faults,
        int moreFaults) {
    public FileReport {
        faults = List.copyOf(faults);
    }

    /**
     * Days of weather.
     *
     * @param first first day
     * @param last last day
     * @param days days with both temperatures
     * @param completeYears calendar years of which every day has both temperatures
     * @param gaps runs of days without both temperatures
     * @param columns columns in use, each with the unit it was read in
     * @param ignored headings that were not used
     * @param notes sentences on what was left out or taken differently, mostly none
     */
    public record Days(
            LocalDate first,
            LocalDate last,
            int days,
            List<Integer> completeYears,
            List<Gap> gaps,
            List<String> columns,
            List<String> ignored,
            List<String> notes) {
        public Days {
            completeYears = List.copyOf(completeYears);
            gaps = List.copyOf(gaps);
            columns = List.copyOf(columns);
            ignored = List.copyOf(ignored);
            notes = List.copyOf(notes);
        }
    }
}
