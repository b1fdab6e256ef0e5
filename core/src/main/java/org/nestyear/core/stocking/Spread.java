package org.nestyear.core.stocking;

/**
 * A number with what is likely about it.
 *
 * @param low not above {@code value}
 * @param high not below {@code value}
 */
public record Spread(double low, double value, double high) {
    public Spread {
        if (!(low >= 0 && low <= value && value <= high && high < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("not a number within its range: " + low + ", " + value + ", " + high);
        }
    }

    /** Each rounded up to a whole number. */
    public Spread roundedUp() {
        return new Spread(up(low), up(value), up(high));
    }

    /** Guards whole numbers against the last bit of a product; numerical. */
    private static final double LAST_BITS = 1e-9;

    static double up(double number) {
        return Math.ceil(number - LAST_BITS);
    }
}
