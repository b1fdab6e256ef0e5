package org.nestyear.core.nesting;

/**
 * One member's nesting season day by day with a limited number of tunnels, in expectation. Each settled female needs
 * a tunnel of her own; a full one makes her look for the next; without a free one she builds nothing.
 */
public final class NestingRun {
    private final FemaleValue value;
    private final NestingSettings settings;
    private final TunnelStock tunnels;

    public NestingRun(FemaleValue value, NestingSettings settings, TunnelStock tunnels) {
        this.value = value;
        this.settings = settings;
        this.tunnels = tunnels;
    }

    /**
     * Runs the season.
     *
     * @param femalesOut females out on each day, in bees
     * @param mated chance that a female out on each day is mated, 0 to 1
     * @param fit share of females still fit to settle, 0 to 1
     */
    public NestingResult run(double[] femalesOut, double[] mated, double fit) {
        DayRates rates = value.rates();
        int n = rates.days();
        Females females = new Females(n);
        double[] cellsByDay = new double[n];
        double free = tunnels.count();
        double daughters = 0;
        double sons = 0;
        for (int d = firstStart(femalesOut); d < n; d++) {
            double newcomers =
                    femalesOut[d - settings.prenestingDays()] * value.settled(d - settings.prenestingDays()) * fit;
            free -= females.arrive(d, newcomers, free);
            double finishing = 0;
            for (int s = females.first; s <= females.last; s++) {
                double built = females.holders[s] * rates.cells[d];
                double share = tunnels.daughterShare(settings, d - s) * mated[s - settings.prenestingDays()];
                cellsByDay[d] += built;
                daughters += built * share * rates.survival[d];
                sons += built * (1 - share) * rates.survival[d];
                finishing += built / tunnels.cellsEach();
            }
            double granted = Math.min(free, finishing);
            free -= granted;
            if (granted < finishing) {
                females.lose((finishing - granted) / finishing * rates.cells[d] / tunnels.cellsEach());
            }
            females.die(rates.death[d]);
        }
        return new NestingResult(daughters, sons, tunnels.count() - free, cellsByDay);
    }

    private int firstStart(double[] femalesOut) {
        int out = 0;
        while (out < femalesOut.length && femalesOut[out] == 0) {
            out++;
        }
        return out + settings.prenestingDays();
    }

    /** Settled females by the day they began: those with a tunnel and those without. */
    private static final class Females {
        private final double[] holders;
        private final double[] waiting;
        private int first;
        private int last = -1;

        Females(int days) {
            holders = new double[days];
            waiting = new double[days];
        }

        /** Adds newcomers and gives free tunnels to all who wait, in equal measure; returns how many were taken. */
        double arrive(int day, double newcomers, double free) {
            if (newcomers > 0) {
                first = last < 0 ? day : first;
                last = day;
                waiting[day] = newcomers;
            }
            double wanted = 0;
            for (int s = first; s <= last; s++) {
                wanted += waiting[s];
            }
            double taken = Math.min(free, wanted);
            double part = wanted > 0 ? taken / wanted : 0;
            for (int s = first; s <= last; s++) {
                holders[s] += waiting[s] * part;
                waiting[s] -= waiting[s] * part;
            }
            return taken;
        }

        void lose(double part) {
            double leaving = Math.min(1, part);
            for (int s = first; s <= last; s++) {
                waiting[s] += holders[s] * leaving;
                holders[s] -= holders[s] * leaving;
            }
        }

        void die(double share) {
            for (int s = first; s <= last; s++) {
                holders[s] *= 1 - share;
                waiting[s] *= 1 - share;
            }
        }
    }
}
