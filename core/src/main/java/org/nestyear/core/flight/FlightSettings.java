package org.nestyear.core.flight;

import org.nestyear.core.source.ParameterReader;

/**
 * What flight and building need of the weather.
 *
 * @param airC lowest air temperature of a flight hour, °C
 * @param radiationWm2 lowest radiation of a flight hour, W/m²
 * @param warmthBaseC base of the degree-hours that go into cells, °C
 * @param cellsPerDegreeHour cells a female builds per degree-hour
 * @param cellsMost most cells a female builds in a day
 * @param wetDayMm rain from which a day counts as wet, mm
 * @param wetDayShare share of its cells built on a wet day
 * @param krs Hargreaves–Samani coefficient for radiation from the day's temperature range, °C^-0.5
 */
public record FlightSettings(
        double airC,
        double radiationWm2,
        double warmthBaseC,
        double cellsPerDegreeHour,
        double cellsMost,
        double wetDayMm,
        double wetDayShare,
        double krs) {
    public static FlightSettings of(ParameterReader parameters) {
        return new FlightSettings(
                parameters.value("flight_air_c"),
                parameters.value("flight_radiation"),
                parameters.value("warmth_base_c"),
                parameters.value("cells_per_degree_hour"),
                parameters.value("cells_most"),
                parameters.value("wet_day_mm"),
                parameters.value("wet_day_share"),
                parameters.value("radiation_krs"));
    }
}
