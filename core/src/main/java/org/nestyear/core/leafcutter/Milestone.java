package org.nestyear.core.leafcutter;

/** What is seen in the cells on the way from prepupa to bee, in order, each with its own sum of warmth. */
public enum Milestone {
    /** First white bee pupae. */
    WHITE_PUPAE("white_pupae"),
    /** Chalcid wasps may come out of the cells from now on. */
    PARASITOIDS("parasitoids"),
    /** Eyes of the pupae colour. */
    COLOURED_EYES("coloured_eyes"),
    /** Pupae fully black. */
    BLACK_PUPAE("black_pupae"),
    /** First adults stand ready in their cells. */
    READY_ADULTS("ready_adults"),
    FIRST_MALE("first_male"),
    FIRST_FEMALE("first_female"),
    /** A third to a half of the females out. */
    HALF_FEMALES("half_females"),
    /** Most bees out. */
    MOST_OUT("most_out");

    private final String id;

    Milestone(String id) {
        this.id = id;
    }

    /** Its name in the catalogue and in answers. */
    public String id() {
        return id;
    }
}
