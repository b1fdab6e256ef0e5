package org.nestyear.core.forage;

import java.util.Locale;

/** What breeders made of a plant's flowers. */
public enum Breeding {
    /** Flowers as in the wild. */
    PLAIN,
    /** A garden hybrid with little or no good pollen. */
    HYBRID,
    /** Petals where the pollen should be. */
    DOUBLE;

    /** The word for it, in lower case. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
