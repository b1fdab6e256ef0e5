package org.nestyear.core.weather;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;

/** The days a station has measured, in order of date; days may be missing and are then known to be missing. */
public final class WeatherRecord {
    private final NavigableMap<LocalDate, DailyWeather> days;

    /**
     * @throws IllegalArgumentException if the record is empty or has a day twice
     */
    public WeatherRecord(Collection<DailyWeather> days) {
        NavigableMap<LocalDate, DailyWeather> byDate = new TreeMap<>();
        for (DailyWeather day : days) {
            if (byDate.put(day.date(), day) != null) {
                throw new IllegalArgumentException("the weather record has two rows for " + day.date());
            }
        }
        if (byDate.isEmpty()) {
            throw new IllegalArgumentException("the weather record holds no day");
        }
        this.days = Collections.unmodifiableNavigableMap(byDate);
    }

    public LocalDate first() {
        return days.firstKey();
    }

    public LocalDate last() {
        return days.lastKey();
    }

    public Collection<DailyWeather> days() {
        return days.values();
    }

    /** The day, if it was recorded at all. */
    public Optional<DailyWeather> find(LocalDate date) {
        return Optional.ofNullable(days.get(date));
    }

    /** The part of the record up to and including {@code last}: what was known on the evening of that day. */
    public Optional<WeatherRecord> upTo(LocalDate last) {
        NavigableMap<LocalDate, DailyWeather> head = days.headMap(last, true);
        return head.isEmpty() ? Optional.empty() : Optional.of(new WeatherRecord(head.values()));
    }

    /** Runs of days between first and last without both temperatures, in order. */
    public List<Gap> gaps() {
        List<Gap> gaps = new ArrayList<>();
        LocalDate start = null;
        for (LocalDate d = first(); !d.isAfter(last()); d = d.plusDays(1)) {
            DailyWeather day = days.get(d);
            boolean missing = day == null || !day.hasTemperatures();
            if (missing && start == null) {
                start = d;
            } else if (!missing && start != null) {
                gaps.add(new Gap(start, d.minusDays(1)));
                start = null;
            }
        }
        if (start != null) {
            gaps.add(new Gap(start, last()));
        }
        return gaps;
    }
}
