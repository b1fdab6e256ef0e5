package org.nestyear.data;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.nestyear.core.weather.DailyWeather;
import org.nestyear.core.weather.WeatherRecord;

/** Collects the values of a GHCN-Daily file, whatever its layout, and counts what it leaves out. */
final class GhcnDays {
    private static final String MISSING = "-9999";
    private static final double TENTHS = 10;
    /** Days of a whole year, so that a summer is among them. */
    private static final int A_YEAR = 365;
    /** 130 °F written as 130 would be read as this; no place with bees has so cool a summer (from memory). */
    private static final double COOLEST_SUMMER_C = 13;

    private final String name;
    private final TreeMap<LocalDate, Map<GhcnElement, Double>> days = new TreeMap<>();
    private final Map<LocalDate, Integer> lines = new HashMap<>();
    private final Set<GhcnElement> found = EnumSet.noneOf(GhcnElement.class);
    private final SortedSet<String> others = new TreeSet<>();
    private final TreeMap<String, Integer> dropped = new TreeMap<>();
    private final TreeMap<String, Integer> hours = new TreeMap<>();
    private @Nullable String station;
    private int traces;

    GhcnDays(String name) {
        this.name = name;
    }

    /**
     * Takes the station of a line.
     *
     * @throws DataFault if an earlier line was of another one
     */
    void station(String told, Position at) {
        String here = told.strip();
        if (station == null) {
            station = here;
        } else if (!station.equals(here)) {
            throw new DataFault(
                    FaultCode.WEATHER_PLACES,
                    at,
                    "the line is of station " + here + ", the lines before of " + station,
                    "one station in a file",
                    "this is a file of many stations: keep the lines of one");
        }
    }

    /** Remembers an element that a plan does not read. */
    void other(String element) {
        others.add(element);
    }

    /**
     * Takes one value.
     *
     * @param value whole tenths as written, blank or −9999 for not measured
     * @param measurement the mark of how it was measured; T for a trace
     * @param quality the mark of the check it failed, blank when it passed all
     * @param time when it was read, {@code HHMM}, or blank
     * @throws DataFault if it is not a whole number, cannot be true, or stands there twice
     */
    void value(
            LocalDate date,
            GhcnElement element,
            String value,
            String measurement,
            String quality,
            String time,
            Position at) {
        String text = value.strip();
        if (text.isEmpty() || text.equals(MISSING)) {
            return;
        }
        int tenths = whole(text, element, at);
        found.add(element);
        if (!quality.isBlank()) {
            dropped.merge(quality.strip(), 1, Integer::sum);
            return;
        }
        if (!element.holds(tenths)) {
            throw new DataFault(
                    FaultCode.WEATHER_RANGE,
                    at,
                    element.words() + " of " + date + " is written as " + tenths,
                    element.limits(),
                    "");
        }
        if (element == GhcnElement.PRCP && measurement.strip().equals("T")) {
            traces++;
            tenths = 0;
        }
        if (element == GhcnElement.TMAX && !time.isBlank()) {
            hours.merge(time.strip(), 1, Integer::sum);
        }
        Map<GhcnElement, Double> day = days.computeIfAbsent(date, key -> new EnumMap<>(GhcnElement.class));
        if (day.putIfAbsent(element, tenths / TENTHS) != null) {
            throw new DataFault(
                    FaultCode.WEATHER_TWICE,
                    at,
                    element.words() + " of " + date + " stands there twice",
                    "each value once",
                    "the same month was appended twice");
        }
        lines.putIfAbsent(date, at.line());
    }

    private static int whole(String text, GhcnElement element, Position at) {
        try {
            return Integer.parseInt(text);
        } catch (NumberFormatException e) {
            boolean decimal = text.matches("-?\\d+[.,]\\d+");
            throw new DataFault(
                    FaultCode.WEATHER_NUMBER,
                    at,
                    element.words() + " is written as \"" + text + "\"",
                    "a whole number of tenths",
                    decimal
                            ? "the file was ordered in whole units: name its columns date, tmin_c, tmax_c and rain_mm,"
                                    + " without the columns of attributes"
                            : "");
        }
    }

    /**
     * The table of one day a line can also be ordered in whole degrees: then the hottest of a whole year of days stays
     * far below what any beekeeper's summer reaches when it is read as tenths.
     *
     * @throws DataFault if the table is in whole degrees
     */
    void checkTenths(Position heading) {
        double[] highs = days.values().stream()
                .mapToDouble(day -> get(day, GhcnElement.TMAX))
                .filter(high -> !Double.isNaN(high))
                .toArray();
        double hottest = Arrays.stream(highs).max().orElse(Double.NaN);
        if (highs.length >= A_YEAR && hottest < COOLEST_SUMMER_C) {
            throw new DataFault(
                    FaultCode.WEATHER_RANGE,
                    heading,
                    "the hottest of " + highs.length + " days would have " + hottest + " °C",
                    "tenths of °C",
                    "the table was ordered in whole degrees: name its columns date, tmin_f and tmax_f (or tmin_c and"
                            + " tmax_c), without the columns of attributes");
        }
    }

    /**
     * Everything taken so far.
     *
     * @throws DataFault if there is no temperature at all
     */
    GhcnReading result() {
        for (GhcnElement needed : List.of(GhcnElement.TMAX, GhcnElement.TMIN)) {
            if (!found.contains(needed)) {
                throw new DataFault(
                        FaultCode.WEATHER_COLUMN,
                        new Position(name, 1, 1),
                        "the file never gives " + needed.words() + " (" + needed + ")",
                        "a station that measures the lowest and the highest temperature",
                        "");
            }
        }
        List<DailyWeather> read = new ArrayList<>();
        int crossed = 0;
        for (Map.Entry<LocalDate, Map<GhcnElement, Double>> day : days.entrySet()) {
            double min = get(day.getValue(), GhcnElement.TMIN);
            double max = get(day.getValue(), GhcnElement.TMAX);
            if (min > max) {
                crossed++;
                min = Double.NaN;
                max = Double.NaN;
            }
            read.add(new DailyWeather(
                    day.getKey(),
                    min,
                    max,
                    get(day.getValue(), GhcnElement.PRCP),
                    get(day.getValue(), GhcnElement.AWND),
                    Double.NaN));
        }
        GhcnReport report =
                new GhcnReport(station == null ? "" : station, dropped, traces, crossed, List.copyOf(others), hours);
        List<String> columns = found.stream().map(GhcnElement::column).toList();
        return new GhcnReading(
                new WeatherFile(name, record(read), columns, List.copyOf(others), lines, report.notes()), report);
    }

    private WeatherRecord record(List<DailyWeather> read) {
        if (read.isEmpty()) {
            throw new DataFault(
                    FaultCode.FILE_EMPTY,
                    new Position(name, 1, 1),
                    "every value of the file failed a check of the service",
                    "at least one day",
                    "");
        }
        return new WeatherRecord(read);
    }

    private static double get(Map<GhcnElement, Double> day, GhcnElement element) {
        return day.getOrDefault(element, Double.NaN);
    }
}
