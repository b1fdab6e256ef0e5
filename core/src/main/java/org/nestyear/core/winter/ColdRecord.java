package org.nestyear.core.winter;

import org.nestyear.core.source.ParameterReader;
import org.nestyear.core.species.Sex;

/**
 * How much cold a batch has had when it is put out, and what follows from it for the share that stays in.
 * Survival is kept apart from the clock of emergence, which warmth quickens.
 */
public final class ColdRecord {
    private final double enoughDays;
    private final double poorDays;
    private final double poorShare;
    private final double baseFemale;
    private final double baseMale;
    private final double oldDays;
    private final double oldLoss;

    public ColdRecord(ParameterReader parameters) {
        enoughDays = parameters.value("chill_enough_days");
        poorDays = parameters.value("chill_poor_days");
        poorShare = parameters.value("chill_poor_share");
        baseFemale = parameters.value("never_out_f");
        baseMale = parameters.value("never_out_m");
        oldDays = parameters.value("old_stock_days");
        oldLoss = parameters.value("old_stock_loss");
    }

    /**
     * Share of cocoons that never open: the usual share from enough chill on, rising in a straight line to the poor
     * share at few days of chill (Bosch &amp; Kemp 2004 for the two ends; the line between is assumed).
     *
     * @param chillDays days below the chill limit
     * @return 0 to 1
     */
    public double shareNotOut(Sex sex, double chillDays) {
        double base = sex == Sex.FEMALE ? baseFemale : baseMale;
        double lack = (enoughDays - chillDays) / (enoughDays - poorDays);
        return base + (poorShare - base) * Math.max(0, Math.min(1, lack));
    }

    /** Share of females still fit to settle after {@code chillDays} in the cold, 0 to 1. */
    public double shareFit(double chillDays) {
        return Math.max(0, 1 - oldLoss * Math.max(0, chillDays - oldDays));
    }

    /**
     * Days that count as chill, those with a mean below the limit, before each day of a run.
     *
     * @param meanC daily means, °C
     * @return one value more than there are days: value d is the number among days 0 to d − 1
     */
    public static int[] chillDaysBefore(double[] meanC, double limitC) {
        int[] before = new int[meanC.length + 1];
        for (int d = 0; d < meanC.length; d++) {
            before[d + 1] = before[d] + (meanC[d] < limitC ? 1 : 0);
        }
        return before;
    }
}
