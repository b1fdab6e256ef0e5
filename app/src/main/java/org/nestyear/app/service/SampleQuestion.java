package org.nestyear.app.service;

import java.util.OptionalInt;

/**
 * How many to look at.
 *
 * @param things what there is so many of
 * @param population how many there are in all; empty for very many
 * @param aim what the sample is for
 */
public record SampleQuestion(Things things, OptionalInt population, Aim aim) {
    /** What is looked at. */
    public enum Things {
        COCOONS("cocoons", "cocoon"),
        NESTS("nests", "nest"),
        CONTAINERS("containers", "container");

        private final String word;
        private final String one;

        Things(String word, String one) {
            this.word = word;
            this.one = one;
        }

        /** The word used on the command line. */
        public String word() {
            return word;
        }

        /** So many of them, in words. */
        public String counted(int number) {
            return Wording.number(number, 0) + " " + (number == 1 ? one : word);
        }
    }

    /** What a sample is for. */
    public sealed interface Aim {}

    /**
     * To see a disease at least once if it is there.
     *
     * @param prevalence smallest share of ill ones that must not be missed
     * @param confidence chance of seeing one then
     * @param sensitivity chance that an ill one that is looked at is told to be ill, above 0, at most 1
     */
    public record See(double prevalence, double confidence, double sensitivity) implements Aim {}

    /**
     * To know a share to within a margin.
     *
     * @param expected the share expected
     * @param margin half the width of the interval
     * @param confidence its coverage
     */
    public record Know(double expected, double margin, double confidence) implements Aim {}

    /** To have a lot tested, container by container. */
    public record Lot() implements Aim {}
}
