package org.nestyear.core.weather;

import java.time.LocalDate;
import java.time.Month;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.nestyear.core.stats.Draws;
import org.nestyear.core.stats.LeastSquares;

/**
 * Daily highest and lowest temperature: a yearly curve for dry days and another for wet ones, a yearly curve of their
 * spread, and deviations that follow each other from day to day and hang together (Richardson 1981, Matalas 1967), in
 * each month as they did there.
 */
final class TemperatureProcess {
    /** A numerical floor: the spread is nowhere less than this share of its mean over the year. */
    private static final double LEAST_VARIANCE_SHARE = 0.1;
    /** Mean days of a year, by definition of the Gregorian calendar. */
    private static final double DAYS_OF_YEAR = 365.2425;

    private final boolean wetMatters;
    private final Curve high;
    private final Curve low;
    private final List<Step> steps;

    private TemperatureProcess(boolean wetMatters, Curve high, Curve low, List<Step> steps) {
        this.wetMatters = wetMatters;
        this.high = high;
        this.low = low;
        this.steps = List.copyOf(steps);
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
        TemperatureProcess bare = new TemperatureProcess(wetMatters, high, low, List.of());
        List<List<double[][]>> pairs = new ArrayList<>();
        for (int month = 0; month < Month.values().length; month++) {
            pairs.add(new ArrayList<>());
        }
        for (DailyWeather day : days) {
            DailyWeather before = record.find(day.date().minusDays(1)).orElse(null);
            if (before != null && usable(before, wetMatters)) {
                pairs.get(day.date().getMonthValue() - 1)
                        .add(new double[][] {bare.deviation(day), bare.deviation(before)});
            }
        }
        Moments year = Moments.of(pairs.stream().flatMap(List::stream).toList());
        List<Step> steps = pairs.stream()
                .map(month -> Moments.of(month).leaningOn(year).step())
                .toList();
        return new TemperatureProcess(wetMatters, high, low, steps);
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

    /** The deviation of a day from that of the day before. */
    double[] next(LocalDate date, double[] before, Draws draws) {
        return steps.get(date.getMonthValue() - 1).from(before, draws.normal(), draws.normal());
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

    /** How deviations of one day and the day before hang together: covariances within a day and across the night. */
    private static final class Moments {
        /** A numerical choice: the whole year counts in each month as so many days of it. */
        private static final double YEAR_WEIGHT_DAYS = 30;

        private final double[][] same;
        private final double[][] across;
        private final int pairs;

        private Moments(double[][] same, double[][] across, int pairs) {
            this.same = same;
            this.across = across;
            this.pairs = pairs;
        }

        /** From pairs of a day and the day before; zero without a pair. */
        static Moments of(List<double[][]> pairs) {
            double[][] same = new double[2][2];
            double[][] across = new double[2][2];
            for (double[][] pair : pairs) {
                for (int i = 0; i < 2; i++) {
                    for (int j = 0; j < 2; j++) {
                        same[i][j] += (pair[0][i] * pair[0][j] + pair[1][i] * pair[1][j]) / 2 / pairs.size();
                        across[i][j] += pair[0][i] * pair[1][j] / pairs.size();
                    }
                }
            }
            return new Moments(same, across, pairs.size());
        }

        Moments leaningOn(Moments year) {
            double own = pairs / (pairs + YEAR_WEIGHT_DAYS);
            double[][] mixedSame = new double[2][2];
            double[][] mixedAcross = new double[2][2];
            for (int i = 0; i < 2; i++) {
                for (int j = 0; j < 2; j++) {
                    mixedSame[i][j] = own * same[i][j] + (1 - own) * year.same[i][j];
                    mixedAcross[i][j] = own * across[i][j] + (1 - own) * year.across[i][j];
                }
            }
            return new Moments(mixedSame, mixedAcross, pairs);
        }

        /** The step that keeps these covariances: carried = across · same⁻¹, fresh · freshᵀ = same − carried · acrossᵀ. */
        Step step() {
            double determinant = same[0][0] * same[1][1] - same[0][1] * same[1][0];
            double[][] carried = new double[2][2];
            for (int i = 0; i < 2; i++) {
                carried[i][0] = (across[i][0] * same[1][1] - across[i][1] * same[1][0]) / determinant;
                carried[i][1] = (across[i][1] * same[0][0] - across[i][0] * same[0][1]) / determinant;
            }
            double first = Math.sqrt(Math.max(0, rest(carried, 0, 0)));
            double side = first > 0 ? rest(carried, 1, 0) / first : 0;
            double second = Math.sqrt(Math.max(0, rest(carried, 1, 1) - side * side));
            return new Step(carried, first, side, second);
        }

        private double rest(double[][] carried, int i, int j) {
            return same[i][j] - carried[i][0] * across[j][0] - carried[i][1] * across[j][1];
        }
    }

    /** From one day's deviations to the next day's: a part is carried over, the rest is fresh. */
    private static final class Step {
        private final double[][] carried;
        private final double first;
        private final double side;
        private final double second;

        Step(double[][] carried, double first, double side, double second) {
            this.carried = carried;
            this.first = first;
            this.side = side;
            this.second = second;
        }

        double[] from(double[] before, double one, double two) {
            return new double[] {
                carried[0][0] * before[0] + carried[0][1] * before[1] + first * one,
                carried[1][0] * before[0] + carried[1][1] * before[1] + side * one + second * two
            };
        }
    }
}
