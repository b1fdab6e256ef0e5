package org.nestyear.core.weather;

import java.util.List;

/** From one day's deviations to the next day's: a part is carried over, the rest is fresh (Matalas 1967). */
final class DayToDay {
    private final double[][] carried;
    private final double first;
    private final double side;
    private final double second;

    private DayToDay(double[][] carried, double first, double side, double second) {
        this.carried = carried;
        this.first = first;
        this.side = side;
        this.second = second;
    }

    /** The step of each month, from pairs of a day's deviations and those of the day before. */
    static List<DayToDay> byMonth(List<List<double[][]>> pairs) {
        Moments year = Moments.of(pairs.stream().flatMap(List::stream).toList());
        return pairs.stream()
                .map(month -> Moments.of(month).leaningOn(year).step())
                .toList();
    }

    /**
     * The deviations of a day.
     *
     * @param before those of the day before
     * @param one a standard normal draw
     * @param two another
     */
    double[] from(double[] before, double one, double two) {
        return new double[] {
            carried[0][0] * before[0] + carried[0][1] * before[1] + first * one,
            carried[1][0] * before[0] + carried[1][1] * before[1] + side * one + second * two
        };
    }

    /** How deviations of one day and the day before hang together: covariances within a day and across the night. */
    private static final class Moments {
        /** A numerical choice: the whole year counts in each month as so many days of it. */
        private static final double YEAR_WEIGHT_DAYS = 15;

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
        DayToDay step() {
            double determinant = same[0][0] * same[1][1] - same[0][1] * same[1][0];
            double[][] carried = new double[2][2];
            for (int i = 0; i < 2; i++) {
                carried[i][0] = (across[i][0] * same[1][1] - across[i][1] * same[1][0]) / determinant;
                carried[i][1] = (across[i][1] * same[0][0] - across[i][0] * same[0][1]) / determinant;
            }
            double first = Math.sqrt(Math.max(0, rest(carried, 0, 0)));
            double side = first > 0 ? rest(carried, 1, 0) / first : 0;
            double second = Math.sqrt(Math.max(0, rest(carried, 1, 1) - side * side));
            return new DayToDay(carried, first, side, second);
        }

        private double rest(double[][] carried, int i, int j) {
            return same[i][j] - carried[i][0] * across[j][0] - carried[i][1] * across[j][1];
        }
    }
}
