package org.nestyear.core.advice;

/** How much a finding matters. */
public enum Level {
    /** Worth knowing. */
    NOTE("note"),
    /** Look closer; it may change what you do. */
    WATCH("watch"),
    /** Act. */
    ACT("act");

    private final String word;

    Level(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }
}
