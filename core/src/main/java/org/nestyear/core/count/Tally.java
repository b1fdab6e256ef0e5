package org.nestyear.core.count;

/**
 * So many found among so many looked at. Not always whole: a tally that stands for fewer independent ones is a fraction.
 *
 * @param found 0 to {@code of}
 * @param of above 0
 */
public record Tally(double found, double of) {
    public Tally {
        if (!(of > 0 && of < Double.POSITIVE_INFINITY) || !(found >= 0 && found <= of)) {
            throw new IllegalArgumentException(
                    "a tally needs some looked at, and no more found than that, got " + found + " of " + of);
        }
    }

    /** The share found, 0 to 1. */
    public double share() {
        return found / of;
    }

    /** True when none was found, or all. */
    public boolean isNoneOrAll() {
        return found == 0 || found == of;
    }

    /** The same share among so many. */
    Tally among(double number) {
        return new Tally(Math.min(number, share() * number), number);
    }
}
