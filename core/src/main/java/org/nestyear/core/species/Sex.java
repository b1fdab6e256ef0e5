package org.nestyear.core.species;

/** Female or male; parameter ids end in {@code _f} or {@code _m}. */
public enum Sex {
    FEMALE("_f"),
    MALE("_m");

    private final String suffix;

    Sex(String suffix) {
        this.suffix = suffix;
    }

    /** The ending of parameter ids that hold a value for this sex. */
    public String suffix() {
        return suffix;
    }
}
