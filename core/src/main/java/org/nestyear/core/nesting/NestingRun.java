package org.nestyear.core.nesting;

/**
 * One member's nesting season day by day with a limited number of tunnels, in expectation. Each settled female needs
 * a tunnel of her own; a full one makes her look for the next; without a free one she builds nothing.
 */
public final class NestingRun {
    /** Females or tunnels too few to matter; numerical. */
    private static final double NEGLIGIBLE = 1e-6;

    private final FemaleValue value;
    private final NestingSettings settings;
    private final TunnelStock tunnels;
    private final double[] daughterShare;

    public NestingRun(FemaleValue value, NestingSettings settings, TunnelStock tunnels) {
        this.value = value;
        this.settings = settings;
        this.tunnels = tunnels;
        daughterShare = value.daughterShares();
    }

    /**
     * Runs the season.
     *
     * @param femalesOut females fit to settle that come out on each day, in bees
     * @param mated chance that a female out on each day is mated, 0 to 1
     */
    public NestingResult run(double[] femalesOut, double[] mated) {
        DayRates rates = value.rates();
        int n = rates.days();
        int firstStart = firstOut(femalesOut) + settings.prenestingDays();
        int lastStart = Math.min(n - 1, lastOut(femalesOut) + settings.prenestingDays());
        Females females = new Females(n, firstStart, lastStart);
        double[] cellsByDay = new double[n];
        double free = tunnels.count();
        double daughters = 0;
        double sons = 0;
        for (int d = firstStart; d < n; d++) {
            int out = d - settings.prenestingDays();
            free -= females.arrive(d, femalesOut[out] * value.settled(out), free);
            double holding = 0;
            double towardsDaughters = 0;
            for (int s = firstStart; s <= Math.min(d, lastStart); s++) {
                holding += females.holders[s];
                towardsDaughters += females.holders[s] * daughterShare[d - s] * mated[s - settings.prenestingDays()];
            }
            double cells = holding * rates.cells[d];
            cellsByDay[d] = cells;
            daughters += towardsDaughters * rates.cells[d] * rates.survival[d];
            sons += (holding - towardsDaughters) * rates.cells[d] * rates.survival[d];
            double finishing = cells / tunnels.cellsEach();
            double granted = Math.min(free, finishing);
            free -= granted;
            if (granted < finishing) {
                females.lose((finishing - granted) / finishing * rates.cells[d] / tunnels.cellsEach());
            }
            females.die(rates.death[d]);
            boolean none = holding < NEGLIGIBLE && (free < NEGLIGIBLE || females.waitNone());
            if (none && d > lastStart) {
                break;
            }
        }
        return new NestingResult(daughters, sons, tunnels.count() - free, cellsByDay);
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

    /** Settled females by the day they began: those with a tunnel and those without. */
    private static final class Females {
        private final double[] holders;
        private final double[] waiting;
        private final int first;
        private final int last;

        Females(int days, int first, int last) {
            holders = new double[days];
            waiting = new double[days];
            this.first = first;
            this.last = last;
        }

        /** Adds newcomers and gives free tunnels to all who wait, in equal measure; returns how many were taken. */
        double arrive(int day, double newcomers, double free) {
            waiting[day] += newcomers;
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

        boolean waitNone() {
            double sum = 0;
            for (int s = first; s <= last; s++) {
                sum += waiting[s];
            }
            return sum < NEGLIGIBLE;
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
