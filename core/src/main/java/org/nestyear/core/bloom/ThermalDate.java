package org.nestyear.core.bloom;

import org.nestyear.core.season.SeasonWeather;

/** The day on which the warmth since a start date reaches a sum. */
public final class ThermalDate {
    private ThermalDate() {}

    /**
     * Finds that day.
     *
     * @param start season-weather index of the first day counted
     * @param baseC base temperature, °C; a day counts the mean of what its minimum and its maximum each have
     *     above it, the form under which the catalogue's sum was fitted
     * @param sum degree-days, °C·d
     * @return index of the day with its part, for instance 120.4; the number of days when the sum is not reached
     */
    public static double of(SeasonWeather weather, int start, double baseC, double sum) {
        double reached = 0;
        for (int d = Math.max(0, start); d < weather.days(); d++) {
            double gain = (Math.max(0, weather.minC()[d] - baseC) + Math.max(0, weather.maxC()[d] - baseC)) / 2;
            if (reached + gain >= sum) {
                return d + (sum - reached) / gain;
            }
            reached += gain;
        }
        return weather.days();
    }
}
