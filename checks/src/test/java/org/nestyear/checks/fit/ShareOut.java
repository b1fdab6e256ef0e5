package org.nestyear.checks.fit;

import org.hipparchus.special.Erf;
import org.nestyear.core.emergence.EmergenceSettings;
import org.nestyear.core.emergence.ThermalSums;
import org.nestyear.core.stats.NormalQuantiles;

/**
 * The share of bees out by the start of each day: the mean, over bees that differ in their need of cold, of the share
 * whose need of warmth is met. Smooth in the values, which the product's grid of bees is not; the rates and sums are
 * the product's own.
 */
final class ShareOut {
    /** Bees along the need of cold. */
    private static final int BEES = 31;

    private static final double[] Z = NormalQuantiles.midpoints(BEES);

    /** The normal distribution function every 1/512 from −8 to 8; between them straight lines, off by less than 1e-7. */
    private static final double REACH = 8;

    private static final int PER_UNIT = 512;
    private static final double[] NORMAL = table();

    private ShareOut() {}

    private static double[] table() {
        double[] table = new double[(int) (2 * REACH * PER_UNIT) + 2];
        for (int i = 0; i < table.length; i++) {
            table[i] = Erf.erfc((REACH - (double) i / PER_UNIT) / Math.sqrt(2)) / 2;
        }
        return table;
    }

    private static double normal(double z) {
        if (z <= -REACH) {
            return 0;
        }
        if (z >= REACH) {
            return 1;
        }
        double at = (z + REACH) * PER_UNIT;
        int i = (int) at;
        return NORMAL[i] + (at - i) * (NORMAL[i + 1] - NORMAL[i]);
    }

    /**
     * Share out by the start of day i, one more value than days.
     *
     * @param before readiness gathered before day 0, days at 4 °C; until then the bees were too cold for warmth to count
     */
    static double[] byDay(EmergenceSettings settings, ThermalSums sums, double before) {
        int days = sums.days();
        double[] share = new double[days + 1];
        double lnNeed = Math.log(settings.gateNeed());
        for (double z : Z) {
            double missing = settings.need() * Math.exp(settings.spread() * z) - before;
            int ready = 0;
            while (ready < days && sums.readinessAt(ready + 1) < missing) {
                ready++;
            }
            if (ready == days) {
                continue;
            }
            double gain = sums.readinessAt(ready + 1) - sums.readinessAt(ready);
            double part = missing <= 0 ? 0 : (missing - sums.readinessAt(ready)) / gain;
            double from = sums.warmthAt(ready) + part * (sums.warmthAt(ready + 1) - sums.warmthAt(ready));
            for (int d = ready + 1; d <= days; d++) {
                double warmth = sums.warmthAt(d) - from;
                if (warmth > 0) {
                    share[d] += normal((Math.log(warmth) - lnNeed) / settings.gateSpread());
                }
            }
        }
        for (int d = 0; d <= days; d++) {
            share[d] /= BEES;
        }
        return share;
    }
}
