package org.nestyear.core.weather;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import org.nestyear.core.sun.DayLength;
import org.nestyear.core.sun.DaySpan;

/**
 * Twenty-four temperatures a day from the day's lowest and highest.
 *
 * <p>After Linvill (1990), "Calculating chilling hours and chill units from daily maximum and minimum temperature
 * observations", HortScience 25(1):14–16: a sine from sunrise to sunset,
 * T(h) = Tmin + (Tmax − Tmin) · sin(π (h − sunrise) / (D + 4)) with day length D, and by night a logarithmic fall from
 * the temperature at sunset towards the next minimum. The day's highest falls at solar hour 14.
 *
 * <p>The evening divides by ln(N + 1) and the hours before sunrise by ln N, N the length of the night, and the latter
 * start from yesterday's temperatures under today's day length: this is the widely used form whose reference output the
 * project is checked against. That form can run past the minimum it falls to just before sunrise, and below the day's own
 * minimum late in the evening. Here the fall ends at the minimum it is heading for, and every hour is held inside the
 * minimum and maximum of its own day, because those are what the thermometer showed.
 *
 * <p>Before sunrise on the first day and after sunset on the last the neighbour is not known: that day's minimum is
 * used. Where the sun does not set, the sine runs from hour 0 to hour 24; where it does not rise, the day is flat at
 * the middle of its range.
 *
 * <p>Stateless; may be called from many threads. Cost linear in the days, no object per hour.
 */
public final class HourlyTemperatures {
    /** Linvill (1990): the sine is that of a day four hours longer, which puts its crest two hours after noon. */
    private static final double SINE_EXTENSION_HOURS = 4;
    /** Hours in a day, by definition. */
    private static final double DAY_HOURS = 24;

    private HourlyTemperatures() {}

    /**
     * The hours of consecutive days.
     *
     * @param firstDay date of index 0
     * @param minC lowest temperature of each day, °C
     * @param maxC highest temperature of each day, °C, as many as {@code minC}
     * @param latitudeDeg degrees north, −90 to 90
     * @return 24 values a day in °C, index 24·d + h for solar hour h (hour 12 is solar noon) of day d
     * @throws IllegalArgumentException if the arrays differ in length, a value is missing or not finite, or a minimum
     *     lies above its maximum
     */
    public static double[] fromDailyRange(LocalDate firstDay, double[] minC, double[] maxC, double latitudeDeg) {
        check(firstDay, minC, maxC);
        int days = minC.length;
        double[] hours = new double[24 * days];
        DaySpan yesterday = DayLength.of(latitudeDeg, firstDay.minusDays(1).getDayOfYear());
        DaySpan today = DayLength.of(latitudeDeg, firstDay.getDayOfYear());
        for (int d = 0; d < days; d++) {
            DaySpan tomorrow =
                    DayLength.of(latitudeDeg, firstDay.plusDays(d + 1L).getDayOfYear());
            fillDay(hours, d, minC, maxC, yesterday, today, tomorrow);
            yesterday = today;
            today = tomorrow;
        }
        return hours;
    }

    /**
     * The hours of a run of days out of a record that has them all.
     *
     * @param days how many days from {@code from} on
     * @return 24 values a day in °C, as in {@link #fromDailyRange}
     */
    public static double[] ofDays(WeatherRecord known, LocalDate from, int days, double latitudeDeg) {
        List<DailyWeather> run = known.days().stream()
                .filter(day -> !day.date().isBefore(from) && day.date().isBefore(from.plusDays(days)))
                .toList();
        return fromDailyRange(
                from,
                run.stream().mapToDouble(DailyWeather::minC).toArray(),
                run.stream().mapToDouble(DailyWeather::maxC).toArray(),
                latitudeDeg);
    }

    private static void fillDay(
            double[] hours, int d, double[] minC, double[] maxC, DaySpan yesterday, DaySpan today, DaySpan tomorrow) {
        double low = minC[d];
        double high = maxC[d];
        int at = 24 * d;
        if (today.isPolarNight()) {
            Arrays.fill(hours, at, at + 24, low + (high - low) / 2);
            return;
        }
        int hour = 0;
        double eve = d == 0 ? low : sunsetC(minC[d - 1], maxC[d - 1], today);
        double nightBefore = 24 - (yesterday.sunsetHour() - today.sunriseHour());
        // ln N has no use for a night of an hour or less: the fall is then over at once.
        double scale = nightBefore > 1 ? Math.log(nightBefore) : 0;
        for (; hour < 24 && hour < today.sunriseHour(); hour++) {
            double fallen = Math.min(scale, Math.log1p(hour + 24 - yesterday.sunsetHour()));
            hours[at + hour] = within(low, high, scale > 0 ? eve - (eve - low) * fallen / scale : low);
        }
        double step = Math.PI / (today.lengthHours() + SINE_EXTENSION_HOURS);
        for (; hour < 24 && hour <= today.sunsetHour(); hour++) {
            hours[at + hour] = within(low, high, low + (high - low) * Math.sin(step * (hour - today.sunriseHour())));
        }
        boolean last = d == minC.length - 1;
        double dusk = last ? low : sunsetC(low, high, today);
        double slope = last ? 0 : (dusk - minC[d + 1]) / Math.log1p(24 - today.sunsetHour() + tomorrow.sunriseHour());
        for (; hour < 24; hour++) {
            hours[at + hour] = within(low, high, dusk - slope * Math.log1p(hour - today.sunsetHour()));
        }
    }

    /** Temperature at sunset of a day with this range under the given day length. */
    private static double sunsetC(double minC, double maxC, DaySpan span) {
        double hours = span.lengthHours();
        return minC + (maxC - minC) * Math.sin(Math.PI * hours / (hours + SINE_EXTENSION_HOURS));
    }

    private static double within(double low, double high, double value) {
        return Math.max(low, Math.min(high, value));
    }

    private static void check(LocalDate firstDay, double[] minC, double[] maxC) {
        if (minC.length != maxC.length) {
            throw new IllegalArgumentException(
                    "there are " + minC.length + " minimum and " + maxC.length + " maximum temperatures");
        }
        for (int d = 0; d < minC.length; d++) {
            if (!(minC[d] <= maxC[d] && minC[d] > Double.NEGATIVE_INFINITY && maxC[d] < Double.POSITIVE_INFINITY)) {
                throw new IllegalArgumentException("minimum " + minC[d] + " °C and maximum " + maxC[d]
                        + " °C are not the range of a day on " + firstDay.plusDays(d));
            }
        }
    }

    /** Days, counted by hours, from one temperature on and below another. */
    public static double daysWithin(double[] hourlyC, double fromC, double belowC) {
        return Arrays.stream(hourlyC)
                        .filter(celsius -> celsius >= fromC && celsius < belowC)
                        .count()
                / DAY_HOURS;
    }
}
