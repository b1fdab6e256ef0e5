package org.nestyear.checks.fit;

import org.hipparchus.special.Erf;
import org.nestyear.core.emergence.EmergenceSettings;
import org.nestyear.core.emergence.ThermalSums;

/**
 * The share of bees out by the start of each day: the mean, over the days on which bees become ready, of the share
 * whose need of warmth is met from then on. Smooth in the values, which the product's grid of bees is not; the rates
 * and sums are the product's own.
 */
final class ShareOut {
    /** Moments of a day at which the bees that become ready on it are taken to do so: Gauss's two points. */
    private static final double[] MOMENTS = {0.5 - Math.sqrt(1 / 12.0), 0.5 + Math.sqrt(1 / 12.0)};
    /** Bees too few to count. */
    private static final double FEW = 1e-7;

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
        double ready = readyBy(settings, before + sums.readinessAt(0));
        add(share, settings, sums, 0, 0, ready);
        for (int day = 0; day < days; day++) {
            double tomorrow = readyBy(settings, before + sums.readinessAt(day + 1));
            if (sums.warmthAt(day + 1) <= sums.warmthAt(day)) {
                add(share, settings, sums, day, 0, tomorrow - ready);
            } else {
                for (double moment : MOMENTS) {
                    add(share, settings, sums, day, moment, (tomorrow - ready) / MOMENTS.length);
                }
            }
            ready = tomorrow;
        }
        return share;
    }

    /** Share of bees whose need of cold is met by this readiness, days at 4 °C. */
    private static double readyBy(EmergenceSettings settings, double readiness) {
        return readiness <= 0 ? 0 : normal(Math.log(readiness / settings.need()) / settings.spread());
    }

    /** Adds the bees that become ready at a moment of a day to the share out of every later day. */
    private static void add(
            double[] share, EmergenceSettings settings, ThermalSums sums, int day, double moment, double bees) {
        if (bees <= FEW) {
            return;
        }
        double lnNeed = Math.log(settings.gateNeed());
        double from = sums.warmthAt(day) + moment * (sums.warmthAt(day + 1) - sums.warmthAt(day));
        double last = from;
        double out = 0;
        for (int d = day + 1; d < share.length; d++) {
            // Most days of a winter add no warmth.
            if (sums.warmthAt(d) > last) {
                last = sums.warmthAt(d);
                out = bees * normal((Math.log(last - from) - lnNeed) / settings.gateSpread());
            }
            share[d] += out;
        }
    }
}
