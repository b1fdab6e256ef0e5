package org.nestyear.core.leafcutter;

import org.jspecify.annotations.Nullable;

/**
 * The temperatures that cells meet from a start: hour by hour as far as they are known, then one temperature for as long as
 * it takes, or nothing known. Immutable.
 */
public final class Warming {
    private static final int HOURS = 24;

    private final double[] hourlyC;
    private final @Nullable Double thenC;

    private Warming(double[] hourlyC, @Nullable Double thenC) {
        this.hourlyC = hourlyC.clone();
        this.thenC = thenC;
    }

    /** One temperature throughout, °C. */
    public static Warming steady(double celsius) {
        return new Warming(new double[0], celsius);
    }

    /** Hours, °C, with nothing known after them. */
    public static Warming hours(double[] hourlyC) {
        return new Warming(hourlyC, null);
    }

    /** Hours, °C, and then one temperature, °C. */
    public static Warming hoursThen(double[] hourlyC, double thenC) {
        return new Warming(hourlyC, thenC);
    }

    /**
     * One temperature, broken by a hold at another.
     *
     * @param celsius before and after, °C
     * @param beforeDays days before the hold
     * @param holdC while held, °C
     * @param holdDays days of the hold
     */
    public static Warming held(double celsius, double beforeDays, double holdC, double holdDays) {
        int before = (int) Math.round(beforeDays * HOURS);
        double[] hours = new double[before + (int) Math.round(holdDays * HOURS)];
        for (int h = 0; h < hours.length; h++) {
            hours[h] = h < before ? celsius : holdC;
        }
        return new Warming(hours, celsius);
    }

    /** Hours that are known one by one. */
    public int knownHours() {
        return hourlyC.length;
    }

    /**
     * Days until a sum is reached.
     *
     * @param baseC base of the sum, °C
     * @param sum degree-days, 0 or more
     * @return days from the start, infinite when the sum is not reached in what is known
     */
    double daysTo(WarmthSettings settings, double baseC, double sum) {
        double left = sum * HOURS;
        for (int h = 0; h < hourlyC.length; h++) {
            double gain = settings.perDay(hourlyC[h], baseC);
            if (gain >= left && left <= 0) {
                return (double) h / HOURS;
            }
            if (gain >= left) {
                return (h + left / gain) / HOURS;
            }
            left -= gain;
        }
        double known = (double) hourlyC.length / HOURS;
        if (left <= 0) {
            return known;
        }
        double rate = thenC == null ? 0 : settings.perDay(thenC, baseC);
        return rate > 0 ? known + left / HOURS / rate : Double.POSITIVE_INFINITY;
    }

    /** Warmth gathered in the known hours before this many days, and at the later temperature after them. */
    public TwoSums gatheredBy(WarmthSettings settings, double days) {
        double low = 0;
        double high = 0;
        double end = days * HOURS;
        for (int h = 0; h < hourlyC.length && h < end; h++) {
            double part = Math.min(1, end - h) / HOURS;
            low += part * settings.perDay(hourlyC[h], settings.lowBaseC());
            high += part * settings.perDay(hourlyC[h], settings.highBaseC());
        }
        double rest = days - (double) hourlyC.length / HOURS;
        TwoSums later = thenC == null || rest <= 0 ? TwoSums.NONE : settings.gathered(thenC, rest);
        return new TwoSums(low + later.lowBase(), high + later.highBase());
    }
}
