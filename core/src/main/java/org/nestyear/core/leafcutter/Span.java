package org.nestyear.core.leafcutter;

/**
 * A time between two bounds.
 *
 * @param earlyDays days from the start, 0 or more; infinite when it does not come
 * @param lateDays days from the start, not below {@code earlyDays}; infinite when it may not come
 */
public record Span(double earlyDays, double lateDays) {
    public Span {
        if (!(earlyDays >= 0 && earlyDays <= lateDays)) {
            throw new IllegalArgumentException("a span runs forward from 0, got " + earlyDays + " to " + lateDays);
        }
    }

    /** True when it comes even by the later bound. */
    public boolean isSure() {
        return Double.isFinite(lateDays);
    }
}
