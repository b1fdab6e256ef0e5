package org.nestyear.core.forage;

/** What a plant is in a region; better first. */
public enum Standing {
    NATIVE("native"),
    /** Native in some of its states or countries only. */
    PART("native in parts"),
    /** Brought in and grown. */
    INTRODUCED("not native"),
    /** Brought in, and runs wild. */
    WILD("not native, and runs wild"),
    /** Not known to grow there. */
    ABSENT("not grown there");

    private final String words;

    Standing(String words) {
        this.words = words;
    }

    /** True for a plant that may be planted there. */
    public boolean isPlanted() {
        return this != WILD && this != ABSENT;
    }

    /** How it reads behind the plant's name. */
    public String words() {
        return words;
    }
}
