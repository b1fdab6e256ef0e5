package org.nestyear.core.bloom.fit;

import java.util.List;
import java.util.OptionalDouble;

/** Warmth added up day by day from a first counted day on. */
final class RunningSum {
    /** A numerical choice: halvings of the span in which the sum is sought, enough for double precision. */
    private static final int HALVINGS = 50;

    private final int firstDay;
    private final double[] after;

    /**
     * @param firstDay number of the first counted day
     * @param after sum after each counted day, never falling
     */
    RunningSum(int firstDay, double[] after) {
        this.firstDay = firstDay;
        this.after = after;
    }

    /** Number of the first counted day. */
    int firstDay() {
        return firstDay;
    }

    /** The day on which the sum is reached, with its part of the day; empty when the days end before. */
    OptionalDouble dayOf(double sum) {
        int at = indexOf(sum);
        return at == after.length ? OptionalDouble.empty() : OptionalDouble.of(day(at, sum));
    }

    /** The same, with the day after the last where the sum is not reached. */
    double dayOrEnd(double sum) {
        int at = indexOf(sum);
        return at == after.length ? firstDay + after.length : day(at, sum);
    }

    private double day(int at, double sum) {
        double before = at == 0 ? 0 : after[at - 1];
        double gain = after[at] - before;
        return firstDay + at + (gain > 0 ? (sum - before) / gain : 0);
    }

    private int indexOf(double sum) {
        int low = 0;
        int high = after.length;
        while (low < high) {
            int middle = (low + high) / 2;
            if (after[middle] >= sum) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return low;
    }

    private double sumAfter(double day) {
        int at = Math.min(after.length - 1, Math.max(0, (int) day - firstDay));
        return after[at];
    }

    /**
     * The sum with which the mean error over some years is nothing.
     *
     * @param sums the years, at least one
     * @param observed day observed in each
     */
    static double withoutBias(List<RunningSum> sums, double[] observed) {
        double low = 0;
        double high = 0;
        for (int i = 0; i < observed.length; i++) {
            high = Math.max(high, sums.get(i).sumAfter(observed[i] + 1));
        }
        for (int step = 0; step < HALVINGS; step++) {
            double middle = (low + high) / 2;
            double error = 0;
            for (int i = 0; i < observed.length; i++) {
                error += sums.get(i).dayOrEnd(middle) - observed[i];
            }
            if (error > 0) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return (low + high) / 2;
    }

    /** Sum of the squared errors over some years with a given sum, d². */
    static double squaredError(List<RunningSum> sums, double[] observed, double sum) {
        double squares = 0;
        for (int i = 0; i < observed.length; i++) {
            double error = sums.get(i).dayOrEnd(sum) - observed[i];
            squares += error * error;
        }
        return squares;
    }
}
