package org.nestyear.core.flight;

import org.nestyear.core.season.SeasonWeather;
import org.nestyear.core.weather.SolarRadiation;

/**
 * For each day of a season: hours in which bees can fly, and cells a female could build were food no limit. A flight
 * hour has air and radiation above their thresholds (Vicens &amp; Bosch 2000); cells follow the degree-hours of the
 * flight hours (computed from the field sites published with Ruddle et al. 2018).
 */
public final class FlightDays {
    private static final int HOURS = 24;

    private final double[] flightHours;
    private final double[] cells;

    private FlightDays(double[] flightHours, double[] cells) {
        this.flightHours = flightHours;
        this.cells = cells;
    }

    /**
     * Works out every day of a season.
     *
     * @param weather the season
     * @param hourlyC its hourly temperatures in solar time, °C, 24 a day
     * @param sky radiation above the air over the same days
     */
    public static FlightDays of(FlightSettings settings, SeasonWeather weather, double[] hourlyC, SkyHours sky) {
        int n = weather.days();
        double[] hours = new double[n];
        double[] cells = new double[n];
        for (int d = 0; d < n; d++) {
            double clearness =
                    SolarRadiation.fromTemperatureRangeMjM2(weather.minC()[d], weather.maxC()[d], 1, settings.krs());
            double degreeHours = 0;
            for (int h = 0; h < HOURS; h++) {
                double air = hourlyC[d * HOURS + h];
                if (air >= settings.airC() && clearness * sky.wm2(d, h) >= settings.radiationWm2()) {
                    hours[d]++;
                    degreeHours += Math.max(0, air - settings.warmthBaseC());
                }
            }
            double dry = Math.min(settings.cellsMost(), settings.cellsPerDegreeHour() * degreeHours);
            boolean wet = weather.rainMm()[d] >= settings.wetDayMm();
            cells[d] = wet ? dry * settings.wetDayShare() : dry;
        }
        return new FlightDays(hours, cells);
    }

    /** Days held. */
    public int days() {
        return cells.length;
    }

    /** Flight hours of day {@code d}, 0 to 24. */
    public double flightHours(int d) {
        return flightHours[d];
    }

    /** Cells a female could build on day {@code d} with food no limit. */
    public double cells(int d) {
        return cells[d];
    }

    /** True when bees can fly at all on day {@code d}. */
    public boolean canFly(int d) {
        return flightHours[d] > 0;
    }
}
