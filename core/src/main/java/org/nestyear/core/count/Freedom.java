package org.nestyear.core.count;

import org.hipparchus.distribution.discrete.HypergeometricDistribution;

/**
 * How many to look at so that a disease, if it is there, is seen at least once.
 *
 * @param population how many there are in all, 1 or more
 * @param prevalence smallest share of ill ones that must not be missed, above 0, at most 1
 * @param confidence chance that at least one of them is then among those looked at and told to be ill, above 0 and below 1
 * @param sensitivity chance that an ill one that is looked at is told to be ill, above 0, at most 1
 */
public record Freedom(int population, double prevalence, double confidence, double sensitivity) {
    /** Guards whole numbers against the last bit of a product; numerical. */
    private static final double LAST_BITS = 1e-9;

    public Freedom {
        if (population < 1) {
            throw new IllegalArgumentException("a population has one or more, got " + population);
        }
        checkShares(prevalence, confidence, sensitivity);
    }

    /** Where every ill one is told to be ill. */
    public Freedom(int population, double prevalence, double confidence) {
        this(population, prevalence, confidence, 1);
    }

    private static void checkShares(double prevalence, double confidence, double sensitivity) {
        if (!(prevalence > 0 && prevalence <= 1)
                || !(confidence > 0 && confidence < 1)
                || !(sensitivity > 0 && sensitivity <= 1)) {
            throw new IllegalArgumentException(
                    "a prevalence and a sensitivity are above 0, at most 1, and a confidence between 0 and 1, got "
                            + prevalence + ", " + sensitivity + " and " + confidence);
        }
    }

    /** How many are ill at that share, rounded up. */
    public int ill() {
        return (int) Math.ceil(population * prevalence - LAST_BITS);
    }

    /**
     * The approximation of Cannon and Roe (1982), Livestock disease surveys: (1 − (1 − C)^(1/D)) · (N − (D − 1)/2), rounded
     * up, with N in all and D of them ill. Where an ill one may be missed, that of Cannon (2001), Prev. Vet. Med. 49:141:
     * (1 − (1 − C)^(1/D)) · N / S (from memory), with S its chance to be told. Never more than there are.
     */
    public int sampleSize() {
        double share = -Math.expm1(Math.log1p(-confidence) / ill());
        double number = sensitivity == 1 ? share * (population - (ill() - 1) / 2.0) : share * population / sensitivity;
        return (int) Math.min(population, Math.ceil(number - LAST_BITS));
    }

    /** True when looking at all of them gives the confidence asked for. */
    public boolean isReachable() {
        return chanceToSee(population) >= confidence - LAST_BITS;
    }

    /** The smallest number with which {@link #chanceToSee} reaches the confidence; all when even that does not. */
    public int exactSampleSize() {
        int high = 1;
        while (high < population && chanceToSee(high) < confidence - LAST_BITS) {
            high = (int) Math.min(population, 2L * high);
        }
        int low = high / 2;
        while (low < high) {
            int middle = low + (high - low) / 2;
            if (chanceToSee(middle) < confidence - LAST_BITS) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return high;
    }

    /**
     * The chance that at least one ill one is among {@code looked} taken at random without putting back
     * (hypergeometric) and is told to be ill.
     */
    public double chanceToSee(int looked) {
        int taken = Math.min(looked, population);
        double missed = 0;
        if (sensitivity == 1) {
            missed = 1;
            for (int i = 0; i < taken && missed > 0; i++) {
                missed *= Math.max(0, (population - ill() - i) / (double) (population - i));
            }
        } else if (taken == population) {
            missed = Math.pow(1 - sensitivity, ill());
        } else {
            HypergeometricDistribution among = new HypergeometricDistribution(population, ill(), taken);
            for (int k = among.getSupportLowerBound(); k <= among.getSupportUpperBound(); k++) {
                missed += among.probability(k) * Math.pow(1 - sensitivity, k);
            }
        }
        return 1 - Math.min(1, missed);
    }

    /**
     * How many of a very large number: ln(1 − confidence) / ln(1 − prevalence × sensitivity), rounded up.
     *
     * @param sensitivity chance that an ill one is told to be ill, above 0, at most 1
     */
    public static int ofVeryMany(double prevalence, double confidence, double sensitivity) {
        checkShares(prevalence, confidence, sensitivity);
        double told = prevalence * sensitivity;
        return told == 1 ? 1 : (int) Math.ceil(Math.log1p(-confidence) / Math.log1p(-told) - LAST_BITS);
    }
}
