package org.nestyear.core.leafcutter;

import org.jspecify.annotations.Nullable;

/** What lives in the cell while it is warmed, in order. */
public enum Stage {
    PREPUPA("prepupa", null),
    /** From the moult to a white pupa until its eyes colour. */
    WHITE_PUPA("white pupa", Milestone.WHITE_PUPAE),
    COLOURED_PUPA("pupa with coloured eyes", Milestone.COLOURED_EYES),
    BLACK_PUPA("black pupa", Milestone.BLACK_PUPAE),
    READY_ADULT("adult ready in its cell", Milestone.READY_ADULTS),
    EMERGING("bees coming out", Milestone.FIRST_MALE);

    private final String words;
    private final @Nullable Milestone begins;

    Stage(String words, @Nullable Milestone begins) {
        this.words = words;
        this.begins = begins;
    }

    /** What a keeper calls it. */
    public String words() {
        return words;
    }

    /** The milestone with which it begins; null for the prepupa, which is there from the start. */
    public @Nullable Milestone begins() {
        return begins;
    }

    /** The stage of the foremost cells once these sums have been gathered above one of the bases. */
    static Stage after(WarmthSettings settings, double sum, boolean highBase) {
        Stage reached = PREPUPA;
        for (Stage stage : values()) {
            Milestone first = stage.begins();
            if (first != null) {
                TwoSums sums = settings.sumsOf(first);
                reached = sum >= (highBase ? sums.highBase() : sums.lowBase()) ? stage : reached;
            }
        }
        return reached;
    }

    /**
     * The stage of the foremost cells, by the base that gives the less forward one.
     *
     * @param gathered warmth since the winter
     */
    public static Stage slowest(WarmthSettings settings, TwoSums gathered) {
        Stage low = after(settings, gathered.lowBase(), false);
        Stage high = after(settings, gathered.highBase(), true);
        return low.compareTo(high) <= 0 ? low : high;
    }

    /** The same by the base that gives the more forward one. */
    public static Stage quickest(WarmthSettings settings, TwoSums gathered) {
        Stage low = after(settings, gathered.lowBase(), false);
        Stage high = after(settings, gathered.highBase(), true);
        return low.compareTo(high) >= 0 ? low : high;
    }
}
