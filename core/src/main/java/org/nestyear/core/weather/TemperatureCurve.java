package org.nestyear.core.weather;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.DoubleStream;
import org.nestyear.core.stats.LeastSquares;

/**
 * A yearly curve of a temperature's mean and another of its variance. Both are different on wet days and on days after
 * wet days, since air stays what it was for a day.
 */
final class TemperatureCurve {
    /** A numerical floor: the variance is nowhere less than this share of its mean over the year. */
    private static final double LEAST_VARIANCE_SHARE = 0.1;
    /** A numerical choice: the shortest wave goes three times through the year. */
    private static final int THIRD_WAVE = 3;
    /** Mean days of a year, by definition of the Gregorian calendar. */
    private static final double DAYS_OF_YEAR = 365.2425;

    private final double[] meanTerms;
    private final double[] varianceTerms;
    private final double leastVariance;

    private TemperatureCurve(double[] meanTerms, double[] varianceTerms, double leastVariance) {
        this.meanTerms = meanTerms;
        this.varianceTerms = varianceTerms;
        this.leastVariance = leastVariance;
    }

    /**
     * Fits both curves by least squares.
     *
     * @param terms those of each day, see {@link #terms}
     * @param valuesC temperature of each day, °C
     */
    static TemperatureCurve fit(List<double[]> terms, double[] valuesC) {
        double[][] rows = terms.toArray(double[][]::new);
        double[] mean = LeastSquares.fit(rows, valuesC);
        double[] squares = new double[valuesC.length];
        double sum = 0;
        for (int i = 0; i < valuesC.length; i++) {
            double rest = valuesC[i] - sumOf(mean, rows[i]);
            squares[i] = rest * rest;
            sum += squares[i];
        }
        return new TemperatureCurve(mean, LeastSquares.fit(rows, squares), LEAST_VARIANCE_SHARE * sum / squares.length);
    }

    /** A constant and three waves a year; where rain is known, a constant and one wave more for it today and yesterday. */
    static double[] terms(LocalDate date, boolean wetMatters, boolean wet, boolean wetBefore) {
        double angle = 2 * Math.PI * (date.getDayOfYear() - 1) / DAYS_OF_YEAR;
        double cos = Math.cos(angle);
        double sin = Math.sin(angle);
        DoubleStream year = DoubleStream.of(
                1,
                cos,
                sin,
                Math.cos(2 * angle),
                Math.sin(2 * angle),
                Math.cos(THIRD_WAVE * angle),
                Math.sin(THIRD_WAVE * angle));
        if (!wetMatters) {
            return year.toArray();
        }
        double now = wet ? 1 : 0;
        double then = wetBefore ? 1 : 0;
        return DoubleStream.concat(year, DoubleStream.of(now, now * cos, now * sin, then, then * cos, then * sin))
                .toArray();
    }

    /** How many standard deviations a temperature lies from its mean. */
    double deviation(double valueC, double[] terms) {
        return (valueC - sumOf(meanTerms, terms)) / spread(terms);
    }

    /** The temperature so many standard deviations from its mean, °C. */
    double valueC(double deviation, double[] terms) {
        return sumOf(meanTerms, terms) + spread(terms) * deviation;
    }

    private double spread(double[] terms) {
        return Math.sqrt(Math.max(leastVariance, sumOf(varianceTerms, terms)));
    }

    private static double sumOf(double[] coefficients, double[] terms) {
        double sum = 0;
        for (int i = 0; i < terms.length; i++) {
            sum += coefficients[i] * terms[i];
        }
        return sum;
    }
}
