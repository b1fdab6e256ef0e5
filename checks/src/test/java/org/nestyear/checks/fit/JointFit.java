package org.nestyear.checks.fit;

import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import org.hipparchus.analysis.MultivariateFunction;
import org.hipparchus.exception.MathIllegalStateException;
import org.hipparchus.linear.EigenDecompositionSymmetric;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.optim.InitialGuess;
import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.SimpleBounds;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.nonlinear.scalar.ObjectiveFunction;
import org.hipparchus.optim.nonlinear.scalar.noderiv.BOBYQAOptimizer;

/** Searches the values that make some data most likely. Nothing in it is drawn, so it gives the same answer every time. */
final class JointFit {
    private static final int MOST_TRIES = 2000;
    private static final int MOST_SEARCHES = 6;
    /** A search that gained less, in units of log-likelihood, is the last. */
    private static final double WORTH_ANOTHER = 0.01;

    private static final double FIRST_RADIUS = 0.7;
    private static final double LAST_RADIUS = 5e-3;
    /** The search moves no further than this many standard errors along each direction. */
    private static final double REACH = 8;
    /** Share of a step over which the bend is measured; smaller ones see the surface's roughness. */
    private static final double BEND = 0.3;
    /** Least bend believed, per step squared: one direction is never searched further than REACH times 4.5 steps. */
    private static final double FLATTEST = 0.05;
    /** A value is never taken below this share of its start. */
    private static final double LEAST_SHARE = 0.2;

    private JointFit() {}

    /** Where a search ended. */
    static final class Optimum {
        private final double[] values;
        private final double logLikelihood;

        Optimum(double[] values, double logLikelihood) {
            this.values = values;
            this.logLikelihood = logLikelihood;
        }

        double[] values() {
            return values;
        }

        double logLikelihood() {
            return logLikelihood;
        }
    }

    /**
     * The best values found from a start, those that are not free held.
     *
     * @param free positions in the vector that may move, at least two
     */
    static Optimum search(ToDoubleFunction<double[]> likelihood, double[] start, int[] free) {
        Optimum best = new Optimum(start.clone(), likelihood.applyAsDouble(start));
        // The surface is a long ridge and not quite smooth: each search is laid along the ridge where the last one
        // ended.
        for (int i = 0; i < MOST_SEARCHES; i++) {
            RealMatrix shape = shape(information(likelihood, best.values(), free));
            Optimum next = once(likelihood, best.values(), free, shape);
            double gain = next.logLikelihood() - best.logLikelihood();
            best = gain > 0 ? next : best;
            if (gain < WORTH_ANOTHER) {
                break;
            }
        }
        return best;
    }

    private static Optimum once(ToDoubleFunction<double[]> likelihood, double[] start, int[] free, RealMatrix shape) {
        double[] reach = new double[free.length];
        Arrays.fill(reach, REACH);
        double[] back = Arrays.stream(reach).map(r -> -r).toArray();
        BestSeen best = new BestSeen(likelihood, p -> moved(start, free, shape, p), start);
        try {
            new BOBYQAOptimizer(2 * free.length + 1, FIRST_RADIUS, LAST_RADIUS)
                    .optimize(
                            new MaxEval(MOST_TRIES),
                            GoalType.MAXIMIZE,
                            new ObjectiveFunction(best),
                            new InitialGuess(new double[free.length]),
                            new SimpleBounds(back, reach));
        } catch (MathIllegalStateException e) {
            // Out of tries along a flat ridge: what was seen by then is the answer, and a second search follows.
            return best.optimum;
        }
        return best.optimum;
    }

    /** Remembers the best point tried, whatever ends the search. */
    private static final class BestSeen implements MultivariateFunction {
        private final ToDoubleFunction<double[]> likelihood;
        private final UnaryOperator<double[]> move;
        private Optimum optimum;

        BestSeen(ToDoubleFunction<double[]> likelihood, UnaryOperator<double[]> move, double[] start) {
            this.likelihood = likelihood;
            this.move = move;
            optimum = new Optimum(start, Double.NEGATIVE_INFINITY);
        }

        @Override
        public double value(double[] point) {
            double[] values = move.apply(point);
            double value = likelihood.applyAsDouble(values);
            if (value > optimum.logLikelihood()) {
                optimum = new Optimum(values, value);
            }
            return value;
        }
    }

    private static double[] moved(double[] start, int[] free, RealMatrix shape, double[] by) {
        double[] steps = shape.operate(by);
        double[] values = start.clone();
        for (int i = 0; i < free.length; i++) {
            double moved = start[free[i]] + steps[i] * step(free[i]);
            values[free[i]] = Math.max(moved, LEAST_SHARE * start[free[i]]);
        }
        return values;
    }

    private static double step(int position) {
        return Fitted.ALL.get(position).step();
    }

    /** Positions of all values but these. */
    static int[] allBut(Fitted... held) {
        List<Fitted> kept = Arrays.asList(held);
        return IntStream.range(0, Fitted.values().length)
                .filter(i -> !kept.contains(Fitted.ALL.get(i)))
                .toArray();
    }

    /** Positions of these values. */
    static int[] only(Fitted... free) {
        return Arrays.stream(free).mapToInt(Fitted::at).toArray();
    }

    /** How sharply the log-likelihood bends at a point, per {@link Fitted#step} of each free value. */
    private static RealMatrix information(ToDoubleFunction<double[]> likelihood, double[] top, int[] free) {
        int n = free.length;
        RealMatrix information = MatrixUtils.createRealMatrix(n, n);
        for (int i = 0; i < n; i++) {
            for (int j = 0; j <= i; j++) {
                double bend = (at(likelihood, top, free[i], 1, free[j], 1)
                                - at(likelihood, top, free[i], 1, free[j], -1)
                                - at(likelihood, top, free[i], -1, free[j], 1)
                                + at(likelihood, top, free[i], -1, free[j], -1))
                        / (4 * BEND * BEND);
                // Far from the data a bend may not be a number: then the direction is left as it is.
                double entry = Double.isFinite(bend) ? -bend : 0;
                information.setEntry(i, j, entry);
                information.setEntry(j, i, entry);
            }
        }
        return information;
    }

    private static double at(ToDoubleFunction<double[]> likelihood, double[] top, int i, int signI, int j, int signJ) {
        double[] values = top.clone();
        values[i] += signI * BEND * step(i);
        values[j] += signJ * BEND * step(j);
        return likelihood.applyAsDouble(values);
    }

    /** Directions in which the log-likelihood falls alike, one standard error long each, in steps. */
    private static RealMatrix shape(RealMatrix information) {
        EigenDecompositionSymmetric axes = new EigenDecompositionSymmetric(information);
        double[] length = Arrays.stream(axes.getEigenvalues())
                .map(bend -> 1 / Math.sqrt(Math.max(bend, FLATTEST)))
                .toArray();
        return axes.getV().multiply(MatrixUtils.createRealDiagonalMatrix(length));
    }

    /** Covariance of all values from the curvature of the log-likelihood at its top, in the values' units. */
    static RealMatrix covariance(ToDoubleFunction<double[]> likelihood, double[] top) {
        RealMatrix shape = shape(information(likelihood, top, allBut()));
        RealMatrix covariance = shape.multiply(shape.transpose());
        for (int i = 0; i < top.length; i++) {
            for (int j = 0; j < top.length; j++) {
                covariance.multiplyEntry(i, j, step(i) * step(j));
            }
        }
        return covariance;
    }
}
