package org.nestyear.core.stats;

import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.QRDecomposition;

/** Ordinary least squares. */
public final class LeastSquares {
    private LeastSquares() {}

    /**
     * The coefficients with which the rows come closest to the values.
     *
     * @param rows the terms of each observation, at least as many observations as terms
     * @param values one an observation
     * @throws org.hipparchus.exception.MathIllegalArgumentException if the terms are not independent
     */
    public static double[] fit(double[][] rows, double[] values) {
        return new QRDecomposition(new Array2DRowRealMatrix(rows, false))
                .getSolver()
                .solve(new ArrayRealVector(values, false))
                .toArray();
    }
}
