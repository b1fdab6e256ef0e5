package org.nestyear.core.release;

/**
 * What should be seen if the bees go out on the planned date.
 *
 * @param firstMales a tenth of the males out
 * @param halfMales half the males out
 * @param firstFemales a tenth of the females out
 * @param halfFemales half the females out
 * @param mostFemales nine tenths of the females out
 * @param targetBloom middle of the target bloom
 * @param targetBloomEnd last day of the target bloom
 * @param lastNesting nineteen cells in twenty built
 * @param cells expected nest cells
 * @param daughters expected surviving daughters
 * @param daughtersLow tenth percentile of surviving daughters
 * @param daughtersHigh ninetieth percentile
 * @param sons expected surviving sons
 * @param tunnelsUsed expected tunnels begun
 * @param unmated share of females that come out when no male is expected alive, 0 to 1
 * @param lostInStore share of female cocoons that open in the store before they are put out, 0 to 1
 * @param malesLostInStore the same of male cocoons
 * @param coldSpell share of seasons with three or more flightless days in a row in the two weeks after release
 * @param noFemaleSettles chance that not one female settles, 0 to 1; counted bee by bee for a small stock
 */
public record Outlook(
        DateRange firstMales,
        DateRange halfMales,
        DateRange firstFemales,
        DateRange halfFemales,
        DateRange mostFemales,
        DateRange targetBloom,
        DateRange targetBloomEnd,
        DateRange lastNesting,
        double cells,
        double daughters,
        double daughtersLow,
        double daughtersHigh,
        double sons,
        double tunnelsUsed,
        double unmated,
        double lostInStore,
        double malesLostInStore,
        double coldSpell,
        double noFemaleSettles) {}
