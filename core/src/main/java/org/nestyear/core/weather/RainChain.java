package org.nestyear.core.weather;

import java.time.LocalDate;
import java.time.Month;
import java.util.Optional;
import org.nestyear.core.stats.Draws;

/**
 * Wet and dry days as a chain with two states, and gamma amounts on wet days, month by month (Richardson 1981). A month
 * of which little was seen leans on the whole year.
 */
final class RainChain {
    /** From this on a day is wet, mm: 0.01 inch in Richardson (1981). */
    private static final double WET_MM = 0.254;
    /** A numerical choice: with fewer wet, or dry, days nothing is fitted. */
    private static final int FEWEST_DAYS = 30;
    /** A numerical choice: the whole year counts in each month as so many days of it. */
    private static final double YEAR_WEIGHT_DAYS = 5;

    private final double[] wetAfterDry;
    private final double[] wetAfterWet;
    private final double[] meanExcessMm;
    private final double shape;

    private RainChain(double[] wetAfterDry, double[] wetAfterWet, double[] meanExcessMm, double shape) {
        this.wetAfterDry = wetAfterDry;
        this.wetAfterWet = wetAfterWet;
        this.meanExcessMm = meanExcessMm;
        this.shape = shape;
    }

    /** True for a wet day; false also where rain was not measured. */
    static boolean isWet(double rainMm) {
        return rainMm >= WET_MM;
    }

    /** Fits the chain; empty when rain was measured on less than half of the days or too few of them were wet or dry. */
    static Optional<RainChain> fit(WeatherRecord record) {
        int months = Month.values().length;
        // Per month: dry before, then wet; wet before, then wet. The last index is the whole year.
        double[][] before = new double[2][months + 1];
        double[][] thenWet = new double[2][months + 1];
        double[] wetDays = new double[months + 1];
        double[] excess = new double[months + 1];
        int measured = 0;
        for (DailyWeather day : record.days()) {
            if (Double.isNaN(day.rainMm())) {
                continue;
            }
            measured++;
            int month = day.date().getMonthValue() - 1;
            boolean wet = isWet(day.rainMm());
            if (wet) {
                count(wetDays, month, 1);
                count(excess, month, day.rainMm() - WET_MM);
            }
            Optional<DailyWeather> previous = record.find(day.date().minusDays(1));
            if (previous.isPresent() && !Double.isNaN(previous.get().rainMm())) {
                int state = isWet(previous.get().rainMm()) ? 1 : 0;
                count(before[state], month, 1);
                count(thenWet[state], month, wet ? 1 : 0);
            }
        }
        double wet = wetDays[months];
        if (2 * measured < record.days().size() || wet < FEWEST_DAYS || measured - wet < FEWEST_DAYS) {
            return Optional.empty();
        }
        double[] means = shares(excess, wetDays);
        return Optional.of(new RainChain(
                shares(thenWet[0], before[0]), shares(thenWet[1], before[1]), means, shape(record, means)));
    }

    private static void count(double[] counts, int month, double value) {
        counts[month] += value;
        counts[counts.length - 1] += value;
    }

    private static double[] shares(double[] sums, double[] counts) {
        int months = sums.length - 1;
        double year = counts[months] > 0 ? sums[months] / counts[months] : 0;
        double[] shares = new double[months];
        for (int m = 0; m < months; m++) {
            shares[m] = (sums[m] + YEAR_WEIGHT_DAYS * year) / (counts[m] + YEAR_WEIGHT_DAYS);
        }
        return shares;
    }

    /** One over the variance of the amounts, each over the mean of its month: the method of moments. */
    private static double shape(WeatherRecord record, double[] means) {
        double sum = 0;
        double squares = 0;
        int n = 0;
        for (DailyWeather day : record.days()) {
            double mean = means[day.date().getMonthValue() - 1];
            if (isWet(day.rainMm()) && mean > 0) {
                double ratio = (day.rainMm() - WET_MM) / mean;
                sum += ratio;
                squares += ratio * ratio;
                n++;
            }
        }
        double mean = n > 0 ? sum / n : 0;
        double variance = n > 1 ? (squares - n * mean * mean) / (n - 1) : 0;
        return variance > 0 ? mean * mean / variance : 1;
    }

    /** Whether a day is wet. */
    boolean drawWet(LocalDate date, boolean wetBefore, Draws draws) {
        int month = date.getMonthValue() - 1;
        return draws.uniform() < (wetBefore ? wetAfterWet[month] : wetAfterDry[month]);
    }

    /** Rain of a wet day, mm. */
    double drawRainMm(LocalDate date, Draws draws) {
        return WET_MM + meanExcessMm[date.getMonthValue() - 1] / shape * draws.gamma(shape);
    }
}
