package org.nestyear.core.species;

/** The two kinds of bee, by how they build. */
public enum BeeKind {
    MASON("mason", "mason bees"),
    LEAFCUTTER("leafcutter", "leafcutter bees");

    private final String word;
    private final String label;

    BeeKind(String word, String label) {
        this.word = word;
        this.label = label;
    }

    /** As it is written on the command line and in JSON answers. */
    public String word() {
        return word;
    }

    /** As it reads in a sentence. */
    public String label() {
        return label;
    }
}
