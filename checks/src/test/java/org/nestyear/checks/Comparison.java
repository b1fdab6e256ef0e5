package org.nestyear.checks;

import java.util.Locale;

/**
 * Many computed numbers against as many expected ones. Fails on a number that is not finite, on a difference above the
 * tolerance, and on fewer rows than promised, so that an empty file cannot pass. Prints the worst row either way.
 */
public final class Comparison {
    private final String what;
    private final double tolerance;
    private int rows;
    private int beyond;
    private double worst = -1;
    private String worstRow = "none";

    /**
     * @param what what is compared, with its unit
     * @param tolerance largest difference allowed, in that unit
     */
    public Comparison(String what, double tolerance) {
        if (!(tolerance >= 0 && tolerance < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("tolerance " + tolerance + " is not a size");
        }
        this.what = what;
        this.tolerance = tolerance;
    }

    /** One row. */
    public void add(String row, double computed, double expected) {
        if (!Double.isFinite(computed) || !Double.isFinite(expected)) {
            throw new AssertionError(what + ", " + row + ": computed " + computed + ", expected " + expected);
        }
        rows++;
        double difference = Math.abs(computed - expected);
        if (difference > tolerance) {
            beyond++;
        }
        if (difference > worst) {
            worst = difference;
            worstRow = row + ": computed " + computed + ", expected " + expected;
        }
    }

    /** Ends the comparison, which must have had at least so many rows. */
    public void check(int leastRows) {
        String summary = String.format(
                Locale.ROOT,
                "%s: %d rows, tolerance %.3g, largest difference %.3g at %s",
                what,
                rows,
                tolerance,
                worst,
                worstRow);
        System.out.println(summary);
        if (rows == 0 || rows < leastRows) {
            throw new AssertionError("only " + rows + " of at least " + leastRows + " rows compared; " + summary);
        }
        if (beyond > 0) {
            throw new AssertionError(beyond + " rows beyond the tolerance; " + summary);
        }
    }
}
