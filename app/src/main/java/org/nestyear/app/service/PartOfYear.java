package org.nestyear.app.service;

/** A part of the year, in words, so that it holds on both halves of the earth. */
public enum PartOfYear {
    SPRING("spring"),
    SUMMER("summer"),
    AUTUMN("autumn"),
    WINTER("winter");

    private final String word;

    PartOfYear(String word) {
        this.word = word;
    }

    /** The word used on the command line and in the catalogue. */
    public String word() {
        return word;
    }

    /** True while bees fly. */
    public boolean isFlight() {
        return this == SPRING || this == SUMMER;
    }
}
