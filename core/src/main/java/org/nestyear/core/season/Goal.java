package org.nestyear.core.season;

/** What the keeper wants most from a release. */
public enum Goal {
    /** Half brood, half bees in the target bloom. */
    BOTH("both"),
    /** Most surviving daughters. */
    BROOD("brood"),
    /** Most female flight days inside the target bloom. */
    BLOOM("bloom");

    private final String word;

    Goal(String word) {
        this.word = word;
    }

    /** The word used in season files and on the page. */
    public String word() {
        return word;
    }
}
