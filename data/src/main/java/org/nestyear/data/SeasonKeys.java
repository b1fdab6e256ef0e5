package org.nestyear.data;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** The tables and keys of a season file, format 1. The same list stands in {@code season-1.schema.json}. */
final class SeasonKeys {
    /** Keys of each table; the empty name is the top of the file. */
    static final Map<String, List<String>> TABLES = tables();

    /** Tables written {@code [[name]]}, of which there may be several. */
    static final List<String> REPEATED = List.of("batch", "nests", "plant", "community");

    private SeasonKeys() {}

    private static Map<String, List<String>> tables() {
        Map<String, List<String>> tables = new LinkedHashMap<>();
        tables.put("", List.of("format", "site", "weather", "batch", "nests", "plant", "community", "aim"));
        tables.put(
                "site",
                List.of(
                        "name",
                        "latitude",
                        "longitude",
                        "elevation_m",
                        "zone",
                        "faces_deg",
                        "horizon",
                        "region",
                        "roof_out_cm",
                        "roof_above_cm"));
        tables.put("weather", List.of("files", "forecast"));
        tables.put(
                "batch",
                List.of("species", "origin", "females", "males", "wintered", "chill_days", "chill_c", "winter_log"));
        tables.put("nests", List.of("kind", "openable", "hole_width_mm", "length_mm", "count"));
        tables.put(
                "plant",
                List.of(
                        "name",
                        "cover_m2",
                        "target",
                        "first_bloom",
                        "last_bloom",
                        "model",
                        "from",
                        "base_c",
                        "degree_days",
                        "days_open",
                        "past_bloom",
                        "species",
                        "distance_m",
                        "flowers_m2"));
        tables.put("community", List.of("from", "peak", "to", "level"));
        tables.put("aim", List.of("goal", "today"));
        return tables;
    }

    /** How a table is written in the file. */
    static String written(String table) {
        return REPEATED.contains(table) ? "[[" + table + "]]" : "[" + table + "]";
    }

    /** The fault of a key that this table does not have. */
    static DataFault unknown(String table, String key, Position at) {
        List<String> known = TABLES.getOrDefault(table, List.of());
        boolean top = table.isEmpty();
        return new DataFault(
                top ? FaultCode.SEASON_TABLE : FaultCode.SEASON_KEY,
                at,
                top ? "there is no table or key \"" + key + "\"" : "\"" + key + "\" is not a key of " + written(table),
                "one of " + String.join(", ", known),
                advice(known, key));
    }

    private static String advice(List<String> known, String key) {
        String nearest = NearestWord.find(key, known);
        if (nearest != null) {
            return "\"" + nearest + "\" was meant";
        }
        String home = home(key);
        return home == null ? "" : "it belongs under " + written(home);
    }

    private static @Nullable String home(String key) {
        List<String> homes = new ArrayList<>();
        TABLES.forEach((table, keys) -> {
            if (!table.isEmpty() && keys.contains(key)) {
                homes.add(table);
            }
        });
        return homes.isEmpty() ? null : homes.get(0);
    }
}
