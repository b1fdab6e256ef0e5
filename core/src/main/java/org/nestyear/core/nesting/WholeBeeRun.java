package org.nestyear.core.nesting;

import java.util.Arrays;
import org.nestyear.core.stats.Draws;

/**
 * One release in one member run with whole bees: each cocoon opens or not, each male dies some day, each female finds a
 * male or not, settles or not, builds whole cells in whole tunnels until she dies, and each cell gives a daughter, a son
 * or nothing. Its mean over many runs is that of {@link NestingRun}.
 */
public final class WholeBeeRun {
    private final FemaleValue value;
    private final NestingSettings settings;
    private final TunnelStock tunnels;
    private final int femaleCocoons;
    private final int maleCocoons;
    private final double[] femalesOut;
    private final double[] malesOut;
    private final int[] females;
    private final int[] males;

    /**
     * A run.
     *
     * @param femaleCocoons female cocoons put out
     * @param femalesOut females expected to come out fit on each day, in bees; shared, not changed
     * @param maleCocoons male cocoons put out
     * @param malesOut males expected to come out on each day, in bees; shared, not changed
     */
    public WholeBeeRun(
            FemaleValue value,
            NestingSettings settings,
            TunnelStock tunnels,
            int femaleCocoons,
            double[] femalesOut,
            int maleCocoons,
            double[] malesOut) {
        this.value = value;
        this.settings = settings;
        this.tunnels = tunnels;
        this.femaleCocoons = femaleCocoons;
        this.maleCocoons = maleCocoons;
        this.femalesOut = femalesOut;
        this.malesOut = malesOut;
        females = new int[value.days()];
        males = new int[value.days()];
    }

    /** What one run came to, in bees. */
    public record Result(int settled, int daughters, int sons) {}

    /** Makes the next run. */
    public Result next(Draws draws) {
        comeOut(femaleCocoons, femalesOut, females, draws);
        comeOut(maleCocoons, malesOut, males, draws);
        int alive = 0;
        int settled = 0;
        int daughters = 0;
        int sons = 0;
        double free = tunnels.count();
        for (int d = 0; d < females.length; d++) {
            alive = survivors(alive, settings.maleDeath(), draws) + males[d];
            for (int f = 0; f < females[d]; f++) {
                int start = d + settings.prenestingDays();
                if (start < females.length && free >= 1 && draws.uniform() < value.settled(d)) {
                    settled++;
                    int[] brood = brood(start, alive > 0, free, draws);
                    daughters += brood[0];
                    sons += brood[1];
                    free -= brood[2];
                }
            }
        }
        return new Result(settled, daughters, sons);
    }

    private static void comeOut(int cocoons, double[] expected, int[] byDay, Draws draws) {
        Arrays.fill(byDay, 0);
        for (int c = 0; c < cocoons; c++) {
            double left = draws.uniform() * cocoons;
            for (int d = 0; d < expected.length; d++) {
                left -= expected[d];
                if (left < 0) {
                    byDay[d]++;
                    break;
                }
            }
        }
    }

    private static int survivors(int bees, double death, Draws draws) {
        int left = 0;
        for (int b = 0; b < bees; b++) {
            left += draws.uniform() < death ? 0 : 1;
        }
        return left;
    }

    /** Daughters, sons and tunnels of one settled female. */
    private int[] brood(int start, boolean mated, double free, Draws draws) {
        DayRates rates = value.rates();
        double most = free * tunnels.cellsEach();
        int daughters = 0;
        int sons = 0;
        int cells = 0;
        // A random start makes the whole cells as many on average as the parts of cells that the days allow.
        double begun = draws.uniform();
        for (int d = start; d < rates.days() && cells < most; d++) {
            begun += rates.cells[d];
            while (cells + 1 <= begun && cells < most) {
                cells++;
                if (draws.uniform() < rates.survival[d]) {
                    boolean daughter = mated && draws.uniform() < value.daughterShares()[d - start];
                    daughters += daughter ? 1 : 0;
                    sons += daughter ? 0 : 1;
                }
            }
            if (draws.uniform() < rates.death[d]) {
                break;
            }
        }
        return new int[] {daughters, sons, (int) Math.ceil(Math.max(1, cells / tunnels.cellsEach()))};
    }
}
