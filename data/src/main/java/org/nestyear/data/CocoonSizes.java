package org.nestyear.data;

import java.util.List;

/**
 * Sizes of cocoons as measured.
 *
 * @param measure what was measured
 * @param sizes mg or mm: one a cocoon, or the sieves from the finest on, each once
 * @param counts for each size how many: 1 for a measured cocoon; for a sieve those that stayed on it, 0 or more
 */
public record CocoonSizes(Measure measure, List<Double> sizes, List<Double> counts) {
    /** What was measured. */
    public enum Measure {
        WEIGHT("weight_mg"),
        WIDTH("size_mm"),
        SIEVE("sieve_mm");

        private final String column;

        Measure(String column) {
            this.column = column;
        }

        /** The column that holds it. */
        public String column() {
            return column;
        }
    }

    public CocoonSizes {
        sizes = List.copyOf(sizes);
        counts = List.copyOf(counts);
    }
}
