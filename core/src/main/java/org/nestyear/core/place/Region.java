package org.nestyear.core.place;

import java.util.Locale;

/** A part of the world for which it is known which plants are native and about when a bloom word falls. */
public enum Region {
    EASTERN_NORTH_AMERICA,
    WESTERN_NORTH_AMERICA,
    NORTH_WEST_EUROPE,
    CENTRAL_EUROPE;

    /** The word used in season files and answers, as {@code central-europe}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /**
     * The region with this word.
     *
     * @throws IllegalArgumentException if there is none
     */
    public static Region ofWord(String word) {
        for (Region region : values()) {
            if (region.word().equals(word)) {
                return region;
            }
        }
        throw new IllegalArgumentException("there is no region \"" + word + "\"");
    }
}
