package org.nestyear.core.forage;

import java.util.Locale;

/** When a plant blooms, in a word. A word is no date: what it means hangs on the region. */
public enum BloomWord {
    LATE_WINTER,
    EARLY_SPRING,
    SPRING,
    MID_SPRING,
    LATE_SPRING,
    EARLY_SUMMER,
    SUMMER,
    MID_SUMMER,
    LATE_SUMMER,
    FALL;

    /** The word as it reads, such as {@code mid spring}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /**
     * The bloom word that reads so.
     *
     * @throws IllegalArgumentException if there is none
     */
    public static BloomWord ofWord(String word) {
        for (BloomWord each : values()) {
            if (each.word().equals(word)) {
                return each;
            }
        }
        throw new IllegalArgumentException("there is no bloom word \"" + word + "\"");
    }
}
