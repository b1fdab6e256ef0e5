package org.nestyear.core.nesting;

import java.util.Arrays;

/**
 * One member's nesting season day by day with a limited number of tunnels, in expectation. Each settled female needs
 * a tunnel of her own; a full one makes her look for the next; without a free one she builds nothing.
 *
 * <p>Females are held by the day they began, since their daughters grow fewer with the days they have nested; what
 * happens to those with and without a tunnel is the same for all days, so their totals suffice for all else. Not for
 * several threads at once: it keeps its arrays so that nothing is allocated per release.
 */
public final class NestingRun {
    /** Females or tunnels too few to matter; numerical. */
    private static final double NEGLIGIBLE = 1e-6;
    /** How many totals are kept of a run; numerical. */
    private static final int TOTALS = 3;

    private final FemaleValue value;
    private final NestingSettings settings;
    private final TunnelStock tunnels;
    private final double[] daughterShare;
    /** Days of nesting after which only sons are laid. */
    private final int daughterDays;
    /** Mated females with a tunnel, by the day they began. */
    private final double[] holders;
    /** And without one. */
    private final double[] waiting;

    private final double[] cellsByDay;
    private final double[] nestingByDay;
    /** Daughters, sons and tunnels begun of the last run. */
    private final double[] totals = new double[TOTALS];

    public NestingRun(FemaleValue value, NestingSettings settings, TunnelStock tunnels) {
        this.value = value;
        this.settings = settings;
        this.tunnels = tunnels;
        daughterShare = value.daughterShares();
        int last = 0;
        while (last < daughterShare.length && daughterShare[last] > 0) {
            last++;
        }
        daughterDays = last;
        holders = new double[value.days()];
        waiting = new double[value.days()];
        cellsByDay = new double[value.days()];
        nestingByDay = new double[value.days()];
    }

    /**
     * Runs the season.
     *
     * @param femalesOut females fit to settle that come out on each day, in bees
     * @param mated chance that a female out on each day is mated, 0 to 1
     */
    public NestingResult run(double[] femalesOut, double[] mated) {
        Arrays.fill(cellsByDay, 0);
        Arrays.fill(nestingByDay, 0);
        go(femalesOut, mated, value.days());
        return new NestingResult(totals[0], totals[1], totals[2], cellsByDay.clone(), nestingByDay.clone());
    }

    /** Only the surviving daughters of such a season; allocates nothing. */
    public double daughters(double[] femalesOut, double[] mated) {
        go(femalesOut, mated, lastOut(femalesOut) + settings.prenestingDays() + daughterDays);
        return totals[0];
    }

    private void go(double[] femalesOut, double[] mated, int end) {
        DayRates rates = value.rates();
        int pre = settings.prenestingDays();
        int first = firstOut(femalesOut) + pre;
        int last = Math.min(value.days() - 1, lastOut(femalesOut) + pre);
        double free = tunnels.count();
        double holding = 0;
        double queueing = 0;
        double leaving = 0;
        double staying = 1;
        double daughters = 0;
        double sons = 0;
        for (int d = first; d < Math.min(end, value.days()); d++) {
            double newcomers = d <= last ? femalesOut[d - pre] * value.settled(d - pre) : 0;
            queueing += newcomers;
            double taken = Math.min(free, queueing);
            double part = queueing > 0 ? taken / queueing : 0;
            free -= taken;
            holding += taken;
            queueing -= taken;
            double mothers = move(first, Math.min(d - 1, last), d, staying, leaving, part);
            if (d <= last) {
                double able = newcomers * mated[d - pre];
                holders[d] = able * part;
                waiting[d] = able - holders[d];
                mothers += holders[d] * daughterShare[0];
            }
            double cells = holding * rates.cells[d];
            cellsByDay[d] = cells;
            nestingByDay[d] = holding;
            daughters += mothers * rates.cells[d] * rates.survival[d];
            sons += (holding - mothers) * rates.cells[d] * rates.survival[d];
            double finishing = cells / tunnels.cellsEach();
            double granted = Math.min(free, finishing);
            free -= granted;
            leaving = granted < finishing
                    ? Math.min(1, (finishing - granted) / finishing * rates.cells[d] / tunnels.cellsEach())
                    : 0;
            staying = 1 - rates.death[d];
            boolean none = holding < NEGLIGIBLE && (free < NEGLIGIBLE || queueing < NEGLIGIBLE);
            queueing = (queueing + holding * leaving) * staying;
            holding = holding * (1 - leaving) * staying;
            if (none && d > last) {
                break;
            }
        }
        totals[0] = daughters;
        totals[1] = sons;
        totals[2] = tunnels.count() - free;
    }

    /**
     * Takes the females of the days {@code first} to {@code last} from yesterday morning's state to this morning's: some
     * lost their place, some died, some who waited got one.
     *
     * @return females with a tunnel, each times her share of daughters
     */
    private double move(int first, int last, int today, double staying, double leaving, double part) {
        double stayed = (1 - leaving) * staying;
        double left = leaving * staying;
        double mothers = 0;
        for (int s = Math.max(first, today - daughterDays); s <= last; s++) {
            double looking = waiting[s] * staying + holders[s] * left;
            double holds = holders[s] * stayed + looking * part;
            holders[s] = holds;
            waiting[s] = looking - looking * part;
            mothers += holds * daughterShare[today - s];
        }
        return mothers;
    }

    private static int lastOut(double[] femalesOut) {
        int out = femalesOut.length - 1;
        while (out > 0 && femalesOut[out] == 0) {
            out--;
        }
        return out;
    }

    private static int firstOut(double[] femalesOut) {
        int out = 0;
        while (out < femalesOut.length && femalesOut[out] == 0) {
            out++;
        }
        return out;
    }
}
