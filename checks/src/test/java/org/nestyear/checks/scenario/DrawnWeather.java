package org.nestyear.checks.scenario;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import org.nestyear.core.weather.DailyWeather;

/**
 * Weather drawn with a few anchors: temperatures run in straight lines from one anchor to the next, rain stays as it was
 * at the last one, and all of it swings a little, so that no spring is smooth.
 */
final class DrawnWeather {
    /** Warm and cold days follow each other by this much, °C. */
    private static final double SWING_C = 2.5;
    /** Days from one warm spell to the next. */
    private static final double SWING_DAYS = 11;

    private record Anchor(double minC, double maxC, double rainMm) {}

    private final NavigableMap<LocalDate, Anchor> anchors = new TreeMap<>();

    void add(LocalDate date, double minC, double maxC, double rainMm) {
        anchors.put(date, new Anchor(minC, maxC, rainMm));
    }

    boolean isEmpty() {
        return anchors.isEmpty();
    }

    LocalDate first() {
        return anchors.firstKey();
    }

    LocalDate last() {
        return anchors.lastKey();
    }

    /** The anchors of a usual year repeated over so many years, for a year that was later and warmer by so much. */
    DrawnWeather repeated(int from, int to, int laterDays, double warmerC) {
        DrawnWeather all = new DrawnWeather();
        for (int year = from; year <= to; year++) {
            for (Map.Entry<LocalDate, Anchor> entry : anchors.entrySet()) {
                Anchor a = entry.getValue();
                all.add(
                        entry.getKey().withYear(year).plusDays(laterDays),
                        a.minC + warmerC,
                        a.maxC + warmerC,
                        a.rainMm);
            }
        }
        return all;
    }

    List<DailyWeather> days(LocalDate from, LocalDate to) {
        List<DailyWeather> days = new ArrayList<>();
        for (LocalDate date = from; !date.isAfter(to); date = date.plusDays(1)) {
            days.add(on(date));
        }
        return days;
    }

    private DailyWeather on(LocalDate date) {
        Map.Entry<LocalDate, Anchor> before = anchors.floorEntry(date);
        Map.Entry<LocalDate, Anchor> after = anchors.ceilingEntry(date);
        if (before == null || after == null) {
            throw new IllegalArgumentException("no weather is drawn for " + date);
        }
        double span = after.getKey().toEpochDay() - before.getKey().toEpochDay();
        double part = span == 0 ? 0 : (date.toEpochDay() - before.getKey().toEpochDay()) / span;
        Anchor a = before.getValue();
        Anchor b = after.getValue();
        double swing = SWING_C * Math.sin(2 * Math.PI * (date.toEpochDay() % 365) / SWING_DAYS + date.getYear());
        return new DailyWeather(
                date,
                a.minC + part * (b.minC - a.minC) + swing,
                a.maxC + part * (b.maxC - a.maxC) + swing,
                a.rainMm,
                Double.NaN,
                Double.NaN);
    }
}
