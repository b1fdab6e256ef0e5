package org.nestyear.core.nesting;

/** What a nesting season came to, in expectation; numbers are bees, cells and tunnels. */
public final class NestingResult {
    private final double daughters;
    private final double sons;
    private final double tunnelsUsed;
    private final double[] cellsByDay;
    private final double[] nestingByDay;

    NestingResult(double daughters, double sons, double tunnelsUsed, double[] cellsByDay, double[] nestingByDay) {
        this.daughters = daughters;
        this.sons = sons;
        this.tunnelsUsed = tunnelsUsed;
        this.cellsByDay = cellsByDay;
        this.nestingByDay = nestingByDay;
    }

    /** Daughters that live to be adults. */
    public double daughters() {
        return daughters;
    }

    /** Sons that live to be adults. */
    public double sons() {
        return sons;
    }

    /** Cells built over the season. */
    public double cells() {
        double sum = 0;
        for (double cells : cellsByDay) {
            sum += cells;
        }
        return sum;
    }

    /** Females that nest on a day, in bees. */
    public double nesting(int day) {
        return nestingByDay[day];
    }

    /** Tunnels begun. */
    public double tunnelsUsed() {
        return tunnelsUsed;
    }

    /** The day by whose end a share of all cells is built, 0 to 1; 0 when none are. */
    public int dayOfShare(double share) {
        double wanted = share * cells();
        double sum = 0;
        for (int d = 0; d < cellsByDay.length; d++) {
            sum += cellsByDay[d];
            if (sum > 0 && sum >= wanted) {
                return d;
            }
        }
        return 0;
    }
}
