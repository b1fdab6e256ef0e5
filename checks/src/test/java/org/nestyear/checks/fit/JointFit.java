package org.nestyear.checks.fit;

import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.optim.InitialGuess;
import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.PointValuePair;
import org.hipparchus.optim.SimpleBounds;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.nonlinear.scalar.ObjectiveFunction;
import org.hipparchus.optim.nonlinear.scalar.noderiv.BOBYQAOptimizer;

/** Searches the values that make some data most likely. Nothing in it is drawn, so it gives the same answer every time. */
final class JointFit {
    private static final int MOST_TRIES = 6000;
    private static final double FIRST_RADIUS = 0.5;
    private static final double LAST_RADIUS = 1e-4;
    /** The search moves no further than this many steps from where it started. */
    private static final double REACH = 12;
    /** A value is never taken below this share of its start. */
    private static final double LEAST_SHARE = 0.2;

    private JointFit() {}

    /** Where a search ended. */
    record Optimum(double[] values, double logLikelihood) {}

    /**
     * The best values found from a start, those that are not free held.
     *
     * @param free positions in the vector that may move, at least two
     */
    static Optimum search(ToDoubleFunction<double[]> likelihood, double[] start, int[] free) {
        Optimum best = new Optimum(start.clone(), likelihood.applyAsDouble(start));
        // The method's model of the surface is a parabola; a second search from the end mends what it missed.
        for (double radius = FIRST_RADIUS; radius > FIRST_RADIUS / 10; radius /= 3) {
            Optimum next = once(likelihood, best.values(), free, radius);
            if (next.logLikelihood() > best.logLikelihood()) {
                best = next;
            }
        }
        return best;
    }

    private static Optimum once(ToDoubleFunction<double[]> likelihood, double[] start, int[] free, double radius) {
        double[] low = new double[free.length];
        double[] high = new double[free.length];
        for (int i = 0; i < free.length; i++) {
            double step = Fitted.values()[free[i]].step();
            low[i] = Math.max(-REACH, -(1 - LEAST_SHARE) * start[free[i]] / step);
            high[i] = REACH;
        }
        PointValuePair end = new BOBYQAOptimizer(2 * free.length + 1, radius, LAST_RADIUS)
                .optimize(
                        new MaxEval(MOST_TRIES),
                        GoalType.MAXIMIZE,
                        new ObjectiveFunction(p -> likelihood.applyAsDouble(moved(start, free, p))),
                        new InitialGuess(new double[free.length]),
                        new SimpleBounds(low, high));
        return new Optimum(moved(start, free, end.getPoint()), end.getValue());
    }

    private static double[] moved(double[] start, int[] free, double[] by) {
        double[] values = start.clone();
        for (int i = 0; i < free.length; i++) {
            values[free[i]] += by[i] * Fitted.values()[free[i]].step();
        }
        return values;
    }

    /** Positions of all values but these. */
    static int[] allBut(Fitted... held) {
        List<Fitted> kept = Arrays.asList(held);
        return IntStream.range(0, Fitted.values().length)
                .filter(i -> !kept.contains(Fitted.values()[i]))
                .toArray();
    }

    /** Positions of these values. */
    static int[] only(Fitted... free) {
        return Arrays.stream(free).mapToInt(Enum::ordinal).toArray();
    }

    /** Standard error of each value from the curvature of the log-likelihood at its top, in the value's unit. */
    static double[] standardErrors(ToDoubleFunction<double[]> likelihood, double[] top, double stepShare) {
        int n = top.length;
        double[] h = new double[n];
        for (int i = 0; i < n; i++) {
            h[i] = stepShare * Fitted.values()[i].step();
        }
        RealMatrix information = MatrixUtils.createRealMatrix(n, n);
        for (int i = 0; i < n; i++) {
            for (int j = 0; j <= i; j++) {
                double bend = (at(likelihood, top, h, i, 1, j, 1)
                                - at(likelihood, top, h, i, 1, j, -1)
                                - at(likelihood, top, h, i, -1, j, 1)
                                + at(likelihood, top, h, i, -1, j, -1))
                        / (4 * h[i] * h[j]);
                information.setEntry(i, j, -bend);
                information.setEntry(j, i, -bend);
            }
        }
        RealMatrix covariance = new LUDecomposition(information).getSolver().getInverse();
        return IntStream.range(0, n)
                .mapToDouble(i -> Math.sqrt(covariance.getEntry(i, i)))
                .toArray();
    }

    private static double at(
            ToDoubleFunction<double[]> likelihood, double[] top, double[] h, int i, int signI, int j, int signJ) {
        double[] values = top.clone();
        values[i] += signI * h[i];
        values[j] += signJ * h[j];
        return likelihood.applyAsDouble(values);
    }
}
