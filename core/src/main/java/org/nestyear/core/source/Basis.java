package org.nestyear.core.source;

/** How a number is known. Every parameter carries one; answers that rest on the weaker ones say so. */
public enum Basis {
    /** Measured in a study or computed from published raw data. */
    MEASURED("measured"),
    /** Worked out from measured values by a stated calculation. */
    DERIVED("derived"),
    /** A rule of the trade without a published source. */
    COMMON_PRACTICE("common-practice"),
    /** Recalled without the source at hand. */
    FROM_MEMORY("from-memory"),
    /** Our own assumption, with a low and a high, because nothing published was found. */
    ASSUMED("assumed");

    private final String word;

    Basis(String word) {
        this.word = word;
    }

    /** The word used in the catalogue files and in JSON answers. */
    public String word() {
        return word;
    }

    /**
     * The basis with the given word.
     *
     * @throws IllegalArgumentException if no basis has this word
     */
    public static Basis ofWord(String word) {
        for (Basis basis : values()) {
            if (basis.word.equals(word)) {
                return basis;
            }
        }
        throw new IllegalArgumentException(
                "basis \"" + word + "\" is not one of measured, derived, common-practice," + " from-memory, assumed");
    }
}
