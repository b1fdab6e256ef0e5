package org.nestyear.core.nesting;

import org.nestyear.core.bloom.FoodCurve;
import org.nestyear.core.flight.FlightDays;

/**
 * What one female that leaves her cocoon on a given day of one member is expected to give, as long as tunnels and
 * food are no limit. A release is then a weighted sum, since nothing in it depends on other bees.
 */
public final class FemaleValue {
    /** Survival below which the rest of a life is left out; numerical. */
    private static final double NEGLIGIBLE = 1e-5;

    private final DayRates rates;
    private final double[] daughterShares;
    private final double[] daughters;
    private final double[] cells;
    private final double[] cellsFrom;
    private final double[] bloomDays;
    private final double[] settled;

    /**
     * Computes the values for each day of emergence.
     *
     * @param settings how females live
     * @param tunnels tunnels, for the share of daughters only
     * @param flight flight days of the member
     * @param food food of the member
     */
    public FemaleValue(NestingSettings settings, TunnelStock tunnels, FlightDays flight, FoodCurve food) {
        rates = new DayRates(settings, flight, food);
        int n = rates.days();
        daughterShares = new double[n];
        for (int age = 0; age < n; age++) {
            daughterShares[age] = tunnels.daughterShare(settings, age);
        }
        double[] daughtersFrom = daughtersFromStart();
        cellsFrom = new double[n + 1];
        double[] visitsFrom = new double[n + 1];
        for (int d = n - 1; d >= 0; d--) {
            double stay = 1 - rates.death[d];
            cellsFrom[d] = rates.cells[d] + stay * cellsFrom[d + 1];
            visitsFrom[d] = rates.bloomVisit[d] + stay * visitsFrom[d + 1];
        }
        daughters = new double[n];
        cells = new double[n];
        bloomDays = new double[n];
        settled = new double[n];
        for (int e = 0; e < n; e++) {
            int start = e + settings.prenestingDays();
            double visits = 0;
            for (int d = e; d < Math.min(start, n); d++) {
                visits += rates.alive[d] / rates.alive[e] * rates.bloomVisit[d];
            }
            if (start < n) {
                settled[e] = rates.alive[start] / rates.alive[e] * rates.settling[start];
                daughters[e] = settled[e] * daughtersFrom[start];
                cells[e] = settled[e] * cellsFrom[start];
                visits += settled[e] * visitsFrom[start];
            }
            bloomDays[e] = visits;
        }
    }

    private double[] daughtersFromStart() {
        int n = rates.days();
        double[] from = new double[n];
        double[] young = new double[n];
        for (int d = 0; d < n; d++) {
            young[d] = rates.cells[d] * rates.survival[d];
        }
        for (int s = 0; s < n; s++) {
            double sum = 0;
            double here = 1;
            for (int d = s; d < n; d++) {
                double share = daughterShares[d - s];
                if (share <= 0 || here < NEGLIGIBLE) {
                    break;
                }
                sum += here * young[d] * share;
                here *= 1 - rates.death[d];
            }
            from[s] = sum;
        }
        return from;
    }

    /** The daily rates behind the values. */
    DayRates rates() {
        return rates;
    }

    /** Share of daughters by days since a female began to nest; shared, never changed. */
    double[] daughterShares() {
        return daughterShares;
    }

    /** Days held. */
    public int days() {
        return daughters.length;
    }

    /** Surviving daughters of a mated female out on day {@code e}. */
    public double daughters(int e) {
        return daughters[e];
    }

    /** Cells built by a female out on day {@code e}. */
    public double cells(int e) {
        return cells[e];
    }

    /** Cells that a female nesting on day {@code d} builds from that day on. */
    public double cellsStill(int d) {
        return cellsFrom[d];
    }

    /** Chance that a female alive on day {@code from} is alive on day {@code to}, 0 to 1. */
    public double alive(int from, int to) {
        return rates.alive[from] > 0 ? rates.alive[to] / rates.alive[from] : 0;
    }

    /** Flight days inside the target bloom of a female out on day {@code e}, before and while nesting. */
    public double bloomDays(int e) {
        return bloomDays[e];
    }

    /** Chance that a female out on day {@code e} settles, 0 to 1. */
    public double settled(int e) {
        return settled[e];
    }
}
