package org.nestyear.core.weather;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.nestyear.core.stats.Draws;
import org.nestyear.core.stats.LeastSquares;

/**
 * Daily highest and lowest temperature: a yearly curve for dry days and another for wet ones, a yearly curve of their
 * spread, and deviations that follow each other from day to day and hang together (Richardson 1981, Matalas 1967).
 */
final class TemperatureProcess {
    /** A numerical floor: the spread is nowhere less than this share of its mean over the year. */
    private static final double LEAST_VARIANCE_SHARE = 0.1;
    /** Mean days of a year, by definition of the Gregorian calendar. */
    private static final double DAYS_OF_YEAR = 365.2425;

    private final boolean wetMatters;
    private final Curve high;
    private final Curve low;
    private final double[][] carry;
    private final double[][] fresh;

    private TemperatureProcess(boolean wetMatters, Curve high, Curve low, double[][] carry, double[][] fresh) {
        this.wetMatters = wetMatters;
        this.high = high;
        this.low = low;
        this.carry = carry;
        this.fresh = fresh;
    }

    /**
     * Fits the process.
     *
     * @param wetMatters whether wet days have curves of their own; days without measured rain are then left out
     */
    static TemperatureProcess fit(WeatherRecord record, boolean wetMatters) {
        List<DailyWeather> days =
                record.days().stream().filter(day -> usable(day, wetMatters)).toList();
        Curve high = curve(days, DailyWeather::maxC, wetMatters);
        Curve low = curve(days, DailyWeather::minC, wetMatters);
        TemperatureProcess bare = new TemperatureProcess(wetMatters, high, low, new double[2][2], new double[2][2]);
        double[][] same = new double[2][2];
        double[][] next = new double[2][2];
        int pairs = 0;
        for (DailyWeather day : days) {
            DailyWeather before = record.find(day.date().minusDays(1)).orElse(null);
            if (before == null || !usable(before, wetMatters)) {
                continue;
            }
            double[] now = bare.deviation(day);
            double[] then = bare.deviation(before);
            pairs++;
            for (int i = 0; i < 2; i++) {
                for (int j = 0; j < 2; j++) {
                    same[i][j] += (now[i] * now[j] + then[i] * then[j]) / 2;
                    next[i][j] += now[i] * then[j];
                }
            }
        }
        scale(same, 1.0 / pairs);
        scale(next, 1.0 / pairs);
        double[][] carry = times(next, inverse(same));
        double[][] rest = times(carry, transposed(next));
        for (int i = 0; i < 2; i++) {
            for (int j = 0; j < 2; j++) {
                rest[i][j] = same[i][j] - rest[i][j];
            }
        }
        return new TemperatureProcess(wetMatters, high, low, carry, lowerRoot(rest));
    }

    private static boolean usable(DailyWeather day, boolean wetMatters) {
        return day.hasTemperatures() && !(wetMatters && Double.isNaN(day.rainMm()));
    }

    private static Curve curve(List<DailyWeather> days, ToDoubleFunction<DailyWeather> value, boolean wetMatters) {
        List<double[]> terms = new ArrayList<>();
        for (DailyWeather day : days) {
            boolean wet = wetMatters && RainChain.isWet(day.rainMm());
            terms.add(meanTerms(day.date(), wet, wetMatters));
        }
        double[] values = days.stream().mapToDouble(value).toArray();
        double[] mean = LeastSquares.fit(terms.toArray(double[][]::new), values);
        double[] squares = new double[values.length];
        double sum = 0;
        for (int i = 0; i < values.length; i++) {
            double rest = values[i] - sumOf(mean, terms.get(i));
            squares[i] = rest * rest;
            sum += squares[i];
        }
        double[] variance = LeastSquares.fit(terms.toArray(double[][]::new), squares);
        return new Curve(mean, variance, LEAST_VARIANCE_SHARE * sum / squares.length);
    }

    /** Two waves a year, and one for the difference of wet days. */
    private static double[] meanTerms(LocalDate date, boolean wet, boolean wetMatters) {
        double angle = angle(date);
        double w = wet ? 1 : 0;
        double[] dry = {1, Math.cos(angle), Math.sin(angle), Math.cos(2 * angle), Math.sin(2 * angle)};
        return wetMatters ? joined(dry, w, w * Math.cos(angle), w * Math.sin(angle)) : dry;
    }

    private static double angle(LocalDate date) {
        return 2 * Math.PI * (date.getDayOfYear() - 1) / DAYS_OF_YEAR;
    }

    private static double[] joined(double[] first, double... second) {
        double[] all = Arrays.copyOf(first, first.length + second.length);
        System.arraycopy(second, 0, all, first.length, second.length);
        return all;
    }

    /** Deviation of highest and lowest from their curves, in standard deviations. */
    double[] deviation(DailyWeather day) {
        boolean wet = wetMatters && RainChain.isWet(day.rainMm());
        double[] terms = meanTerms(day.date(), wet, wetMatters);
        return new double[] {
            (day.maxC() - high.mean(terms)) / high.spread(terms), (day.minC() - low.mean(terms)) / low.spread(terms)
        };
    }

    /** The deviation of the next day. */
    double[] next(double[] deviation, Draws draws) {
        double one = draws.normal();
        double two = draws.normal();
        double[] next = new double[2];
        for (int i = 0; i < 2; i++) {
            next[i] = carry[i][0] * deviation[0] + carry[i][1] * deviation[1] + fresh[i][0] * one + fresh[i][1] * two;
        }
        return next;
    }

    /** The day with such a deviation; where highest and lowest would cross they change places. */
    DailyWeather day(LocalDate date, boolean wet, double rainMm, double[] deviation) {
        double[] terms = meanTerms(date, wet && wetMatters, wetMatters);
        double highC = high.mean(terms) + high.spread(terms) * deviation[0];
        double lowC = low.mean(terms) + low.spread(terms) * deviation[1];
        return new DailyWeather(date, Math.min(lowC, highC), Math.max(lowC, highC), rainMm, Double.NaN, Double.NaN);
    }

    private static double sumOf(double[] coefficients, double[] terms) {
        double sum = 0;
        for (int i = 0; i < terms.length; i++) {
            sum += coefficients[i] * terms[i];
        }
        return sum;
    }

    private static void scale(double[][] m, double factor) {
        for (double[] row : m) {
            row[0] *= factor;
            row[1] *= factor;
        }
    }

    private static double[][] times(double[][] a, double[][] b) {
        double[][] product = new double[2][2];
        for (int i = 0; i < 2; i++) {
            for (int j = 0; j < 2; j++) {
                product[i][j] = a[i][0] * b[0][j] + a[i][1] * b[1][j];
            }
        }
        return product;
    }

    private static double[][] transposed(double[][] a) {
        return new double[][] {{a[0][0], a[1][0]}, {a[0][1], a[1][1]}};
    }

    private static double[][] inverse(double[][] a) {
        double determinant = a[0][0] * a[1][1] - a[0][1] * a[1][0];
        return new double[][] {
            {a[1][1] / determinant, -a[0][1] / determinant}, {-a[1][0] / determinant, a[0][0] / determinant}
        };
    }

    /** The lower triangle whose square is the matrix, by Cholesky. */
    private static double[][] lowerRoot(double[][] a) {
        double first = Math.sqrt(Math.max(0, a[0][0]));
        double side = first > 0 ? a[1][0] / first : 0;
        return new double[][] {{first, 0}, {side, Math.sqrt(Math.max(0, a[1][1] - side * side))}};
    }

    /** A yearly curve of mean and variance; the variance never falls below {@code leastVariance}. */
    private static final class Curve {
        private final double[] meanTerms;
        private final double[] varianceTerms;
        private final double leastVariance;

        Curve(double[] meanTerms, double[] varianceTerms, double leastVariance) {
            this.meanTerms = meanTerms;
            this.varianceTerms = varianceTerms;
            this.leastVariance = leastVariance;
        }

        double mean(double[] terms) {
            return sumOf(meanTerms, terms);
        }

        double spread(double[] terms) {
            return Math.sqrt(Math.max(leastVariance, sumOf(varianceTerms, terms)));
        }
    }
}
