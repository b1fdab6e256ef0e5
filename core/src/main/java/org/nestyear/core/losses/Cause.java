package org.nestyear.core.losses;

/** What a cell was lost to; a cell has one cause only, the first that explains it. */
public enum Cause {
    CHALKBROOD("chalkbrood", "chalkbrood", Kind.DISEASE),
    MITES("mites", "mites", Kind.ENEMY),
    FLIES("flies", "maggots of the houdini fly and its like", Kind.ENEMY),
    WASPS("wasps", "parasitoid wasps", Kind.ENEMY),
    CUCKOOS("cuckoos", "cuckoo bees and cuckoo wasps", Kind.ENEMY),
    BEETLES("beetles", "beetle larvae", Kind.ENEMY),
    ROBBED("robbed", "birds, mice, ants and other robbers", Kind.ROBBER),
    POLLEN_BALLS("pollen_balls", "pollen balls (food left, no grub)", Kind.FAILURE),
    MOULD("mould", "mould", Kind.FAILURE),
    DEAD_YOUNG("dead_young", "dead grubs and pupae, cause not seen", Kind.FAILURE),
    DEAD_ADULTS("dead_adults", "dead adults in the cocoon", Kind.FAILURE),
    OTHER("other", "other causes", Kind.FAILURE),
    UNKNOWN("unknown", "cause not known", Kind.FAILURE);

    private final String word;
    private final String label;
    private final Kind kind;

    Cause(String word, String label, Kind kind) {
        this.word = word;
        this.label = label;
        this.kind = kind;
    }

    /** Name of the column and of the cause in JSON answers. */
    public String word() {
        return word;
    }

    /** As it reads in a sentence. */
    public String label() {
        return label;
    }

    /** True for disease and for parasites, which spread from nest to nest. */
    public boolean isDiseaseOrParasite() {
        return kind == Kind.DISEASE || kind == Kind.ENEMY;
    }

    private enum Kind {
        DISEASE,
        ENEMY,
        ROBBER,
        FAILURE
    }
}
