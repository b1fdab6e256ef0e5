package org.nestyear.core.advice;

/**
 * A number with its unit, to be written by a face in the keeper's units.
 *
 * @param value in {@code unit}; finite
 * @param decimals decimals to show in metric units, 0 to 3
 */
public record Quantity(double value, Unit unit, int decimals) {
    public Quantity {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("a quantity must be finite, got " + value + " " + unit);
        }
    }

    /** The same quantity shown with other decimals. */
    public Quantity withDecimals(int other) {
        return new Quantity(value, unit, other);
    }

    public static Quantity celsius(double value) {
        return new Quantity(value, Unit.CELSIUS, 0);
    }

    public static Quantity millimetres(double value) {
        return new Quantity(value, Unit.MILLIMETRE, 0);
    }

    public static Quantity metres(double value) {
        return new Quantity(value, Unit.METRE, 0);
    }

    public static Quantity days(double value) {
        return new Quantity(value, Unit.DAY, 0);
    }

    public static Quantity hours(double value) {
        return new Quantity(value, Unit.HOUR, 1);
    }

    public static Quantity count(double value) {
        return new Quantity(value, Unit.COUNT, 0);
    }

    public static Quantity share(double value) {
        return new Quantity(value, Unit.SHARE, 0);
    }
}
