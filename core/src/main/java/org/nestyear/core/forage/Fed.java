package org.nestyear.core.forage;

/** How a week's flowers stand to its cells; better first. */
public enum Fed {
    /** Enough even where flowers give as little as they may. */
    ENOUGH("enough"),
    /** Enough as far as can be said, short if flowers give little. */
    LIKELY_ENOUGH("probably enough"),
    /** Short as far as can be said, enough if flowers give much. */
    LIKELY_SHORT("probably short"),
    /** Short even where flowers give as much as they may. */
    SHORT("short");

    private final String words;

    Fed(String words) {
        this.words = words;
    }

    /** How it reads in a table and in JSON. */
    public String words() {
        return words;
    }

    /** True for a week that is short or probably so. */
    public boolean isGap() {
        return this == LIKELY_SHORT || this == SHORT;
    }
}
