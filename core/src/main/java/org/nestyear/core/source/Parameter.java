package org.nestyear.core.source;

/**
 * One number of the model with everything needed to argue about it.
 *
 * @param id name in the catalogue, lower case with underscores
 * @param value the value used, in {@code unit}
 * @param unit unit in words or symbols, {@code "1"} for a share or a pure number
 * @param low plausible low, in {@code unit}, not above {@code value}
 * @param high plausible high, in {@code unit}, not below {@code value}
 * @param basis how the number is known
 * @param source where it comes from
 * @param locator page, table, section or check within the source
 * @param borrowedFrom species whose value this is when none of its own was found, or empty
 * @param note one short sentence for the reader, or empty
 */
public record Parameter(
        String id,
        double value,
        String unit,
        double low,
        double high,
        Basis basis,
        Source source,
        String locator,
        String borrowedFrom,
        String note) {
    public Parameter {
        if (id.isBlank() || unit.isBlank() || locator.isBlank()) {
            throw new IllegalArgumentException("parameter \"" + id + "\" needs an id, a unit and a locator");
        }
        if (!Double.isFinite(value) || !Double.isFinite(low) || !Double.isFinite(high)) {
            throw new IllegalArgumentException("parameter \"" + id + "\" has a value that is not a finite number");
        }
        if (low > value || value > high) {
            throw new IllegalArgumentException(
                    "parameter \"" + id + "\": value " + value + " lies outside its own range " + low + " to " + high);
        }
    }

    /** True when the value was found for another species and is used for want of a better one. */
    public boolean isBorrowed() {
        return !borrowedFrom.isEmpty();
    }
}
