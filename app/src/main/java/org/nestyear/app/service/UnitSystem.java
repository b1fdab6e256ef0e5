package org.nestyear.app.service;

/** The keeper's units. */
public enum UnitSystem {
    METRIC("metric"),
    US("us");

    private final String word;

    UnitSystem(String word) {
        this.word = word;
    }

    /** The word used on the command line. */
    public String word() {
        return word;
    }
}
