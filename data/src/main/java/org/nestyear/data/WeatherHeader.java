package org.nestyear.data;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Which cell of a row holds what, in which unit, as told by the headings. */
final class WeatherHeader {
    private final Map<WeatherColumn, Integer> cells;
    private final Map<WeatherColumn, WeatherUnit> units;
    private final List<String> ignored;

    private final int width;

    private WeatherHeader(
            Map<WeatherColumn, Integer> cells, Map<WeatherColumn, WeatherUnit> units, List<String> ignored, int width) {
        this.width = width;
        this.cells = cells;
        this.units = units;
        this.ignored = ignored;
    }

    /**
     * Recognises the headings.
     *
     * @param position where the cell with this index stands
     * @throws DataFault if a needed column is missing or stands there twice
     */
    static WeatherHeader of(List<String> headings, CellPosition position) {
        Map<WeatherColumn, Integer> cells = new EnumMap<>(WeatherColumn.class);
        Map<WeatherColumn, WeatherUnit> units = new EnumMap<>(WeatherColumn.class);
        List<String> ignored = new ArrayList<>();
        for (int i = 0; i < headings.size(); i++) {
            Match match = match(headings.get(i));
            if (match == null) {
                if (!headings.get(i).isBlank()) {
                    ignored.add(headings.get(i).strip());
                }
                continue;
            }
            Integer earlier = cells.putIfAbsent(match.column(), i);
            if (earlier != null) {
                throw new DataFault(
                        FaultCode.WEATHER_COLUMN,
                        position.of(i),
                        "the columns \"" + headings.get(earlier).strip() + "\" and \""
                                + headings.get(i).strip() + "\" both give " + words(match.column()),
                        "one of them",
                        "delete the one you do not want used");
            }
            if (match.unit() != null) {
                units.put(match.column(), match.unit());
            }
        }
        WeatherHeader header = new WeatherHeader(cells, units, ignored, headings.size());
        header.requireAll(headings, position);
        return header;
    }

    /** The index of the cell, or −1 when the file has no such column. */
    int cell(WeatherColumn column) {
        return cells.getOrDefault(column, -1);
    }

    /** The unit of the column. */
    WeatherUnit unit(WeatherColumn column) {
        WeatherUnit named = units.get(column);
        return named == null ? WeatherUnit.of(column).get(0) : named;
    }

    /** Columns in use, in the order of our own format. */
    List<WeatherColumn> columns() {
        return List.copyOf(cells.keySet());
    }

    /** How many cells the header line has. */
    int width() {
        return width;
    }

    /** Headings that mean nothing to a plan. */
    List<String> ignored() {
        return List.copyOf(ignored);
    }

    private void requireAll(List<String> headings, CellPosition position) {
        for (WeatherColumn needed : WeatherColumn.required()) {
            if (!cells.containsKey(needed)) {
                throw new DataFault(
                        FaultCode.WEATHER_COLUMN,
                        position.of(0),
                        "no column gives " + words(needed),
                        "a header line such as date,tmin_c,tmax_c,rain_mm",
                        advice(needed, headings));
            }
        }
    }

    private String advice(WeatherColumn needed, List<String> headings) {
        if (!headings.isEmpty() && cells.isEmpty() && Cells.date(headings.get(0)) != null) {
            return "the header line is missing: the first line begins with a day";
        }
        for (String heading : ignored) {
            List<String> known = new ArrayList<>(needed.synonyms());
            known.add(needed.ownName());
            if (NearestWord.find(normal(heading), known) != null) {
                return "\"" + heading + "\" was meant to be " + needed.ownName();
            }
        }
        return "the column has another name here: rename it " + needed.ownName();
    }

    private static String words(WeatherColumn column) {
        return switch (column) {
            case DATE -> "the date";
            case MIN -> "the lowest temperature of the day";
            case MAX -> "the highest temperature of the day";
            case RAIN -> "the rain of the day";
            case WIND -> "the wind";
            case RADIATION -> "the solar radiation";
            case PLACE -> "the place";
        };
    }

    private static @Nullable Match match(String heading) {
        String normal = normal(heading);
        for (WeatherColumn column : WeatherColumn.values()) {
            for (String synonym : column.synonyms()) {
                if (normal.equals(synonym)) {
                    return new Match(column, null);
                }
                if (normal.startsWith(synonym + "_")) {
                    WeatherUnit unit = WeatherUnit.find(column, normal.substring(synonym.length() + 1));
                    if (unit != null) {
                        return new Match(column, unit);
                    }
                }
            }
        }
        return null;
    }

    /** Lower case, {@code ²} as 2, everything that is neither letter nor digit as one underscore between words. */
    private static String normal(String heading) {
        StringBuilder normal = new StringBuilder();
        for (char c : heading.strip().toLowerCase(Locale.ROOT).replace('²', '2').toCharArray()) {
            boolean kept = (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9');
            if (kept) {
                normal.append(c);
            } else if (normal.length() > 0 && normal.charAt(normal.length() - 1) != '_') {
                normal.append('_');
            }
        }
        int end = normal.length();
        return end > 0 && normal.charAt(end - 1) == '_' ? normal.substring(0, end - 1) : normal.toString();
    }

    /** Where a cell of the header line stands. */
    interface CellPosition {
        Position of(int cell);
    }

    private record Match(WeatherColumn column, @Nullable WeatherUnit unit) {}
}
