package org.nestyear.core.forage;

import java.util.Locale;

/** How a plant grows. */
public enum Growth {
    TREE,
    SHRUB,
    CLIMBER,
    PERENNIAL,
    BIENNIAL,
    ANNUAL,
    BULB;

    /** The word for it, in lower case. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** True for what has wood and takes years to bloom. */
    public boolean isWoody() {
        return this == TREE || this == SHRUB || this == CLIMBER;
    }
}
