package org.nestyear.data;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * What was not taken over from a GHCN-Daily file, and what a keeper should know about the rest.
 *
 * @param station name of the station in the file, eleven characters
 * @param droppedByFlag how many temperatures, rains and winds were left out, by the letter with which the service marks
 *     a value that failed a check
 * @param traces how many rains were too small to measure and count as 0 mm
 * @param crossed days on which the lowest lay above the highest temperature; both were left out
 * @param otherElements names of the elements that a plan does not read, in order of name
 * @param hoursOfReading how often the highest temperature was read at each time of day, {@code HHMM}, where the file
 *     says so
 */
public record GhcnReport(
        String station,
        SortedMap<String, Integer> droppedByFlag,
        int traces,
        int crossed,
        List<String> otherElements,
        SortedMap<String, Integer> hoursOfReading) {
    /** What the letters mean (documentation of GHCN-Daily; I seen in data, the others from memory). */
    private static final Map<String, String> CHECKS = Map.ofEntries(
            Map.entry("D", "duplicate"),
            Map.entry("G", "gap"),
            Map.entry("I", "internal inconsistency"),
            Map.entry("K", "streak"),
            Map.entry("L", "length of a multi-day value"),
            Map.entry("M", "mega-consistency"),
            Map.entry("N", "naught"),
            Map.entry("O", "outlier against the climate"),
            Map.entry("R", "lagged range"),
            Map.entry("S", "spatial consistency"),
            Map.entry("T", "temporal consistency"),
            Map.entry("W", "too warm for snow"),
            Map.entry("X", "bounds"),
            Map.entry("Z", "flagged by hand"));

    private static final String NOON = "1200";
    private static final String MIDNIGHT = "0000";

    public GhcnReport {
        droppedByFlag = Collections.unmodifiableSortedMap(new TreeMap<>(droppedByFlag));
        otherElements = List.copyOf(otherElements);
        hoursOfReading = Collections.unmodifiableSortedMap(new TreeMap<>(hoursOfReading));
    }

    /** How many values were left out because they had failed a check. */
    public int dropped() {
        return droppedByFlag.values().stream().mapToInt(Integer::intValue).sum();
    }

    /** True when most readings were made before noon: then the highest temperature is that of the day before. */
    public boolean readInTheMorning() {
        int morning = 0;
        int all = 0;
        for (Map.Entry<String, Integer> hour : hoursOfReading.entrySet()) {
            all += hour.getValue();
            if (hour.getKey().compareTo(MIDNIGHT) > 0 && hour.getKey().compareTo(NOON) < 0) {
                morning += hour.getValue();
            }
        }
        return 2 * morning > all;
    }

    /** The same in sentences, for the keeper; empty when there is nothing to say. */
    public List<String> notes() {
        List<String> notes = new ArrayList<>();
        if (dropped() > 0) {
            List<String> parts = new ArrayList<>();
            droppedByFlag.forEach((flag, count) ->
                    parts.add(count + " marked " + flag + " (" + CHECKS.getOrDefault(flag, "unknown mark") + ")"));
            notes.add(counted(dropped(), "value") + " left out that failed a check of the service: "
                    + String.join(", ", parts) + ".");
        }
        if (crossed > 0) {
            notes.add(counted(crossed, "day") + " left out where the lowest temperature is above the highest.");
        }
        if (traces > 0) {
            notes.add(counted(traces, "day") + " with a trace of rain taken as 0 mm.");
        }
        String usual = usualHour();
        if (readInTheMorning() && usual != null) {
            notes.add(String.format(
                    Locale.ROOT,
                    "The thermometer was mostly read at %s:%s, so the highest temperature of a row was reached on the"
                            + " day before; it was left where it stands.",
                    usual.substring(0, 2),
                    usual.substring(2)));
        }
        return notes;
    }

    private @Nullable String usualHour() {
        return hoursOfReading.entrySet().stream()
                .max(Map.Entry.comparingByValue())
                .map(Map.Entry::getKey)
                .orElse(null);
    }

    private static String counted(int count, String noun) {
        return count + " " + noun + (count == 1 ? "" : "s");
    }
}
