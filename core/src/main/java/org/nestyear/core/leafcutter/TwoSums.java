package org.nestyear.core.leafcutter;

/**
 * Warmth counted twice, above the lower and above the higher base, because the base is only known to lie between them.
 *
 * @param lowBase degree-days above the lower base, °C·d
 * @param highBase degree-days above the higher base, °C·d
 */
public record TwoSums(double lowBase, double highBase) {
    /** No warmth yet. */
    public static final TwoSums NONE = new TwoSums(0, 0);

    /** What is still wanting of these sums when {@code had} has been gathered; never below nothing. */
    TwoSums less(TwoSums had) {
        return new TwoSums(Math.max(0, lowBase - had.lowBase), Math.max(0, highBase - had.highBase));
    }
}
