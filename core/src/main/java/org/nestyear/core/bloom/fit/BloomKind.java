package org.nestyear.core.bloom.fit;

/** Ways to say when a plant blooms. */
public enum BloomKind {
    MEAN_DATE("mean date"),
    THERMAL_TIME("degree-days"),
    STANDARD_DAYS("standard days"),
    CHILL_THEN_HEAT("chill, then heat"),
    SPRING_INDEX("spring index");

    private final String word;

    BloomKind(String word) {
        this.word = word;
    }

    /** Its name in words. */
    public String word() {
        return word;
    }
}
