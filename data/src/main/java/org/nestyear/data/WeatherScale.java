package org.nestyear.data;

import java.util.Arrays;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Looks at a whole table for Fahrenheit values under a heading that says or implies °C. */
final class WeatherScale {
    /** Above the hottest month on earth: the warmest July means of the daily maximum stay below 50 °C (from memory). */
    private static final double HOT_SEASON_C = 52;
    /** Spread between the coldest night and the hottest day that only the coldest inlands come near (from memory). */
    private static final double WIDEST_SPREAD_C = 85;
    /** Those inlands never see such a day (from memory). */
    private static final double HOT_DAY_C = 45;
    /** With fewer days each bad one is named by itself. */
    private static final int FEWEST_DAYS = 10;

    private WeatherScale() {}

    /**
     * The fault of a table in Fahrenheit, or null.
     *
     * @param lows temperatures in the column of the daily minimum, read as °C, also those of refused rows
     * @param highs the same for the daily maximum
     * @param at the heading of the daily maximum
     */
    static @Nullable DataFault check(double[] lows, double[] highs, WeatherUnit unit, Position at) {
        if (unit != WeatherUnit.CELSIUS || highs.length < FEWEST_DAYS || lows.length < FEWEST_DAYS) {
            return null;
        }
        double[] sorted = highs.clone();
        Arrays.sort(sorted);
        double warmQuarter = sorted[(sorted.length - 1) * 7 / 8];
        double hottest = sorted[sorted.length - 1];
        double coldest = Arrays.stream(lows).min().orElse(Double.NaN);
        String found;
        if (warmQuarter > HOT_SEASON_C) {
            found = String.format(Locale.ROOT, "the warmer days of the table reach %.0f °C", warmQuarter);
        } else if (hottest - coldest > WIDEST_SPREAD_C && hottest > HOT_DAY_C) {
            found = String.format(
                    Locale.ROOT, "the table goes from %.0f °C to %.0f °C, wider than any place", coldest, hottest);
        } else {
            return null;
        }
        return new DataFault(
                FaultCode.WEATHER_FAHRENHEIT,
                at,
                found,
                "degrees Celsius",
                "the table is in Fahrenheit: name the columns tmin_f and tmax_f");
    }
}
