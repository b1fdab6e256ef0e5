package org.nestyear.core.stats;

/** The continuous ranked probability score of an ensemble: the lower the better, in the unit of the values. */
public final class RankedProbability {
    private RankedProbability() {}

    /**
     * Mean absolute error of the members less half their mean absolute difference (Gneiting &amp; Raftery 2007, J. Am.
     * Stat. Assoc. 102:359, equation 21; from memory).
     *
     * @param members at least one value
     * @param observed what came
     */
    public static double score(double[] members, double observed) {
        double error = 0;
        double spread = 0;
        for (double a : members) {
            error += Math.abs(a - observed);
            for (double b : members) {
                spread += Math.abs(a - b);
            }
        }
        double n = members.length;
        return error / n - spread / (2 * n * n);
    }
}
