package org.nestyear.core.season;

/** What a nest is made as. */
public enum NestKind {
    TUBE("tube"),
    REED("reed"),
    TRAY("tray"),
    DRILLED_BLOCK("drilled block");

    private final String word;

    NestKind(String word) {
        this.word = word;
    }

    /** The word used in season files. */
    public String word() {
        return word;
    }
}
