package org.nestyear.core.weather;

/**
 * Degree-days of one day from its lowest and highest temperature. Through a day with part of its hours above the base,
 * temperature is taken to follow a single sine (Baskerville &amp; Emin 1969, Ecology 50:514).
 */
public final class DegreeDays {
    private DegreeDays() {}

    /**
     * Area under the sine above a base, °C·d.
     *
     * @param minC lowest temperature, °C
     * @param maxC highest temperature, °C, not below {@code minC}
     * @param baseC base temperature, °C
     */
    public static double sine(double minC, double maxC, double baseC) {
        double mean = (minC + maxC) / 2;
        if (minC >= baseC) {
            return mean - baseC;
        }
        if (maxC <= baseC) {
            return 0;
        }
        double swing = (maxC - minC) / 2;
        double crossing = Math.asin((baseC - mean) / swing);
        return ((mean - baseC) * (Math.PI / 2 - crossing) + swing * Math.cos(crossing)) / Math.PI;
    }

    /**
     * The same with a cap: warmth above {@code capC} counts as {@code capC} (horizontal cut-off).
     *
     * @param capC upper temperature, °C, above {@code baseC}
     */
    public static double sine(double minC, double maxC, double baseC, double capC) {
        return sine(minC, maxC, baseC) - sine(minC, maxC, capC);
    }

    /** The mean of both temperatures above the base, or nothing, °C·d: the sum done by hand. */
    public static double ofMean(double minC, double maxC, double baseC) {
        return Math.max(0, (minC + maxC) / 2 - baseC);
    }
}
