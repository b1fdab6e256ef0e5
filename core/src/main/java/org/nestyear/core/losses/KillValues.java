package org.nestyear.core.losses;

/**
 * Losses on a scale on which they add up: k, the logarithm of how many times fewer are left (Varley and Gradwell 1970).
 * Stateless.
 */
public final class KillValues {
    private KillValues() {}

    /** The logarithm's base, which is always told with a k. */
    public enum Base {
        TEN("10"),
        E("e");

        private final String word;

        Base(String word) {
            this.word = word;
        }

        /** As written on the command line and in answers. */
        public String word() {
            return word;
        }

        private double log(double value) {
            return this == TEN ? Math.log10(value) : Math.log(value);
        }
    }

    /**
     * k of one step: log of those before it over those after it.
     *
     * @param before above 0
     * @param after above 0, not above {@code before}
     */
    public static double between(double before, double after, Base base) {
        if (!(after > 0 && after <= before)) {
            throw new IllegalArgumentException(
                    "a k needs some left, and no more than before, got " + before + " and then " + after);
        }
        return base.log(before / after);
    }

    /**
     * What a cause would take if it acted alone, where causes act side by side in the same proportion all the time:
     * 1 − (1 − d)^(dᵢ/d) (Elkinton, Buonaccorsi, Bellows and Van Driesche 1992, formula from memory).
     *
     * @param cause share of all cells lost to it, 0 to {@code all}
     * @param all share of all cells lost, 0 to 1
     */
    public static double alone(double cause, double all) {
        if (!(cause >= 0 && cause <= all && all <= 1)) {
            throw new IllegalArgumentException("a cause takes a part of all losses, got " + cause + " of " + all);
        }
        return cause == 0 ? 0 : -Math.expm1(cause / all * Math.log1p(-all));
    }
}
