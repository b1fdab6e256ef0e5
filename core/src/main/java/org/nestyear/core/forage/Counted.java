package org.nestyear.core.forage;

import java.util.Locale;

/** What is counted as one flower of a plant. */
public enum Counted {
    /** A single flower. */
    FLOWER,
    /** A flower head or a catkin. */
    HEAD,
    /** A single floret of a head too small to count. */
    FLORET;

    /** The word for several of them, as it stands in the ids of the catalogue. */
    public String plural() {
        return name().toLowerCase(Locale.ROOT) + "s";
    }
}
