package org.nestyear.core.release;

/** Whether the best date lies at the end of the dates tried, so that only a direction can be told. */
public enum Edge {
    NONE(""),
    EARLIER("earlier"),
    LATER("later");

    private final String word;

    Edge(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }
}
