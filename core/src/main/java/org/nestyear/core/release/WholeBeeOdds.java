package org.nestyear.core.release;

/**
 * What a small stock may come to, counted bee by bee in many runs of every possible season.
 *
 * @param runs runs made
 * @param noneSettles share of them in which not one female settles, 0 to 1
 * @param noDaughter share in which no daughter lives to be adult, 0 to 1
 * @param daughtersLow tenth percentile of surviving daughters, bees
 * @param daughtersMiddle median
 * @param daughtersHigh ninetieth percentile
 */
public record WholeBeeOdds(
        int runs,
        double noneSettles,
        double noDaughter,
        double daughtersLow,
        double daughtersMiddle,
        double daughtersHigh) {}
