package org.nestyear.core.season;

/** Where a batch spent the winter; it decides which limits apply. */
public enum Wintered {
    FRIDGE("fridge"),
    SHED("shed"),
    OUTDOORS("outdoors"),
    UNOPENED("unopened");

    private final String word;

    Wintered(String word) {
        this.word = word;
    }

    /** The word used in season files. */
    public String word() {
        return word;
    }
}
