package org.nestyear.core.hygiene;

/** What is to be rinsed; every rule on rinsing depends on it. */
public enum RinseItem {
    /** Empty tunnels, trays, boxes and tools. */
    GEAR("gear"),
    /** Loose cocoons of mason bees. */
    COCOON("cocoon"),
    /** Cells of leafcutter bees, wrapped in leaf. */
    LEAF_CELL("leaf-cell"),
    /** Brood of other bees and wasps that moved in. */
    GUEST("guest");

    private final String word;

    RinseItem(String word) {
        this.word = word;
    }

    /** The word used on the command line and in JSON answers. */
    public String word() {
        return word;
    }

    /** False for what is never rinsed at home, however weak the mixture. */
    public boolean isEverRinsed() {
        return this == GEAR || this == COCOON;
    }
}
