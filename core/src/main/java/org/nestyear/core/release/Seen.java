package org.nestyear.core.release;

/** What has been seen so far after putting cocoons out. */
public enum Seen {
    /** No bee at all. */
    NOTHING("nothing"),
    /** Males, but no female. */
    MALES("males"),
    /** Females, but nothing nests. */
    FEMALES("females");

    private final String word;

    Seen(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }
}
