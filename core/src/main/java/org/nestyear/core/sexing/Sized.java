package org.nestyear.core.sexing;

/**
 * Cocoons of one size, or of a range of sizes between two sieves.
 *
 * @param from lower end, in the unit of the measure; may be negative infinity
 * @param to upper end, the same for a measured cocoon; may be infinity
 * @param count how many, 0 or more
 */
public record Sized(double from, double to, double count) {
    public Sized {
        if (!(from <= to) || !(count >= 0 && count < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(
                    "cocoons of a size need a range and a number, got " + from + " to " + to + ", " + count);
        }
    }

    /** One cocoon, measured. */
    public static Sized of(double size) {
        return new Sized(size, size, 1);
    }

    /** True for a measured size, false for a range between sieves. */
    boolean isPoint() {
        return from == to;
    }

    /** True when a cocoon of this size belongs here. */
    boolean holds(double size) {
        return size >= from && size < to;
    }
}
