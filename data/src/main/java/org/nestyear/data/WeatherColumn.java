package org.nestyear.data;

import java.util.List;

/** The columns a daily weather table can have, and the headings under which they are known. */
enum WeatherColumn {
    DATE("date", List.of("date", "day", "time", "datetime")),
    MIN(
            "tmin_c",
            List.of(
                    "tmin",
                    "t_min",
                    "temp_min",
                    "min_temp",
                    "mintemp",
                    "tempmin",
                    "temperature_min",
                    "min_temperature",
                    "minimum_temperature",
                    "temperature_2m_min",
                    "low",
                    "min")),
    MAX(
            "tmax_c",
            List.of(
                    "tmax",
                    "t_max",
                    "temp_max",
                    "max_temp",
                    "maxtemp",
                    "tempmax",
                    "temperature_max",
                    "max_temperature",
                    "maximum_temperature",
                    "temperature_2m_max",
                    "high",
                    "max")),
    RAIN(
            "rain_mm",
            List.of("rain", "rainfall", "precipitation", "precip", "prcp", "precipitation_sum", "rain_sum", "ppt")),
    WIND(
            "wind_m_s",
            List.of(
                    "wind",
                    "wind_speed",
                    "windspeed",
                    "wind_mean",
                    "mean_wind",
                    "avg_wind",
                    "awnd",
                    "wind_speed_mean")),
    RADIATION(
            "radiation_mj_m2",
            List.of(
                    "radiation",
                    "solar_radiation",
                    "shortwave_radiation",
                    "shortwave_radiation_sum",
                    "global_radiation",
                    "srad",
                    "solar")),
    PLACE("location", List.of("location", "place", "station", "site", "city", "station_name", "name"));

    private final String ownName;

    @SuppressWarnings("ImmutableEnumChecker") // made by List.of
    private final List<String> synonyms;

    WeatherColumn(String ownName, List<String> synonyms) {
        this.ownName = ownName;
        this.synonyms = synonyms;
    }

    /** The heading in our own format. */
    String ownName() {
        return ownName;
    }

    /** Headings without a unit, lower case, words joined by underscores. */
    List<String> synonyms() {
        return synonyms;
    }

    /** The columns without which a file cannot be used. */
    static List<WeatherColumn> required() {
        return List.of(DATE, MIN, MAX, RAIN);
    }
}
