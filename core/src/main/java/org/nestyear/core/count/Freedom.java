package org.nestyear.core.count;

/**
 * How many to look at so that a disease, if it is there, is seen at least once.
 *
 * @param population how many there are in all, 1 or more
 * @param prevalence smallest share of ill ones that must not be missed, above 0, at most 1
 * @param confidence chance that at least one of them is then among those looked at, above 0 and below 1
 */
public record Freedom(int population, double prevalence, double confidence) {
    /** Guards whole numbers against the last bit of a product; numerical. */
    private static final double LAST_BITS = 1e-9;

    public Freedom {
        if (population < 1) {
            throw new IllegalArgumentException("a population has one or more, got " + population);
        }
        checkShares(prevalence, confidence);
    }

    private static void checkShares(double prevalence, double confidence) {
        if (!(prevalence > 0 && prevalence <= 1) || !(confidence > 0 && confidence < 1)) {
            throw new IllegalArgumentException(
                    "a prevalence is above 0, at most 1, and a confidence between 0 and 1, got " + prevalence + " and "
                            + confidence);
        }
    }

    /** How many are ill at that share, rounded up. */
    public int ill() {
        return (int) Math.ceil(population * prevalence - LAST_BITS);
    }

    /**
     * The approximation of Cannon and Roe (1982), Livestock disease surveys: (1 − (1 − C)^(1/D)) · (N − (D − 1)/2), rounded
     * up, with N in all and D of them ill.
     */
    public int sampleSize() {
        double share = -Math.expm1(Math.log1p(-confidence) / ill());
        return (int) Math.min(population, Math.ceil(share * (population - (ill() - 1) / 2.0) - LAST_BITS));
    }

    /** The smallest number with which {@link #chanceToSee} reaches the confidence. */
    public int exactSampleSize() {
        double missed = 1;
        int looked = 0;
        while (1 - missed < confidence - LAST_BITS && looked < population) {
            missed *= Math.max(0, (population - ill() - looked) / (double) (population - looked));
            looked++;
        }
        return looked;
    }

    /**
     * The chance that at least one ill one is among {@code looked} taken at random without putting back
     * (hypergeometric).
     */
    public double chanceToSee(int looked) {
        double missed = 1;
        for (int i = 0; i < Math.min(looked, population); i++) {
            missed *= Math.max(0, (population - ill() - i) / (double) (population - i));
        }
        return 1 - missed;
    }

    /** How many of a very large number: ln(1 − confidence) / ln(1 − prevalence), rounded up. */
    public static int ofVeryMany(double prevalence, double confidence) {
        checkShares(prevalence, confidence);
        return prevalence == 1 ? 1 : (int) Math.ceil(Math.log1p(-confidence) / Math.log1p(-prevalence) - LAST_BITS);
    }
}
