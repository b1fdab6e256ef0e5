package org.nestyear.core.leafcutter;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.nestyear.core.source.Parameter;
import org.nestyear.core.weather.HourlyTemperatures;
import org.nestyear.core.weather.WeatherRecord;

/** When cells of a day are settled prepupae, over past summers: warmth above a base, at both ends of what is published. */
public final class Prepupae {
    /** Days after the egg that are looked at; numerical. */
    private static final int DAYS = 120;
    /** Hours in a day, by definition. */
    private static final double DAY_HOURS = 24;

    private Prepupae() {}

    /**
     * Days from the egg, over all past summers that are whole.
     *
     * @param egg day of the last eggs
     * @param known weather without gaps
     * @param base the row of the base, °C
     * @param sum the row of the warmth above it, °C·d
     * @return nothing if no past summer is whole
     */
    public static Optional<Span> days(
            LocalDate egg, WeatherRecord known, double latitudeDeg, Parameter base, Parameter sum) {
        List<Span> years = new ArrayList<>();
        for (int year = known.first().getYear(); year <= known.last().getYear(); year++) {
            LocalDate from = egg.withYear(year);
            if (from.isBefore(known.first()) || from.plusDays(DAYS - 1L).isAfter(known.last())) {
                continue;
            }
            double[] hourlyC = HourlyTemperatures.ofDays(known, from, DAYS, latitudeDeg);
            years.add(new Span(day(hourlyC, base.low(), sum.low()), day(hourlyC, base.high(), sum.high())));
        }
        return years.isEmpty() ? Optional.empty() : Optional.of(YearsOfDates.band(years));
    }

    /** Days until the warmth above a base, counted by the hour, reaches a sum; infinite if it does not. */
    static double day(double[] hourlyC, double baseC, double sum) {
        double warmth = 0;
        for (int h = 0; h < hourlyC.length; h++) {
            warmth += Math.max(0, hourlyC[h] - baseC) / DAY_HOURS;
            if (warmth >= sum) {
                return Math.ceil((h + 1) / DAY_HOURS);
            }
        }
        return Double.POSITIVE_INFINITY;
    }
}
