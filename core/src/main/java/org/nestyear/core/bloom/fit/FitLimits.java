package org.nestyear.core.bloom.fit;

import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.nestyear.core.source.ParameterReader;

/**
 * What is tried when a model is fitted.
 *
 * @param startDays numbers of the first day counted
 * @param basesC base temperatures, °C
 * @param slopes how steeply warmth speeds development, 1/°C
 * @param portions requirements of chill portions
 * @param leastYears with fewer dates nothing is fitted
 */
record FitLimits(
        List<Integer> startDays, List<Double> basesC, List<Double> slopes, List<Double> portions, int leastYears) {
    /** A numerical choice: days between starts that are tried. */
    private static final int DAYS_APART = 5;
    /** A numerical choice: difference between slopes that are tried, 1/°C. */
    private static final double SLOPES_APART = 0.02;
    /** A numerical tolerance: steps that do not add up exactly still reach the end. */
    private static final double ROUNDING = 1e-9;
    /** A numerical choice: portions between requirements that are tried. */
    private static final double PORTIONS_APART = 2.5;

    FitLimits {
        startDays = List.copyOf(startDays);
        basesC = List.copyOf(basesC);
        slopes = List.copyOf(slopes);
        portions = List.copyOf(portions);
    }

    static FitLimits of(ParameterReader parameters) {
        int first = (int) parameters.value("fit_first_start_day");
        int last = (int) parameters.value("fit_last_start_day");
        return new FitLimits(
                IntStream.iterate(first, day -> day <= last, day -> day + DAYS_APART)
                        .boxed()
                        .toList(),
                steps(parameters.value("fit_first_base_c"), parameters.value("fit_last_base_c"), 1),
                steps(parameters.value("fit_least_slope"), parameters.value("fit_most_slope"), SLOPES_APART),
                steps(parameters.value("fit_least_portions"), parameters.value("fit_most_portions"), PORTIONS_APART),
                (int) parameters.value("fit_least_years"));
    }

    private static List<Double> steps(double first, double last, double apart) {
        return DoubleStream.iterate(first, value -> value <= last + ROUNDING, value -> value + apart)
                .boxed()
                .toList();
    }
}
