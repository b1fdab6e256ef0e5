package org.nestyear.core.nesting;

/** What a nesting season came to, in expectation; numbers are bees, cells and tunnels. */
public final class NestingResult {
    private final double daughters;
    private final double sons;
    private final double cells;
    private final double tunnelsUsed;
    private final double[] nesting;

    NestingResult(double daughters, double sons, double cells, double tunnelsUsed, double[] nesting) {
        this.daughters = daughters;
        this.sons = sons;
        this.cells = cells;
        this.tunnelsUsed = tunnelsUsed;
        this.nesting = nesting;
    }

    /** Daughters that live to be adults. */
    public double daughters() {
        return daughters;
    }

    /** Sons that live to be adults. */
    public double sons() {
        return sons;
    }

    /** Cells built. */
    public double cells() {
        return cells;
    }

    /** Tunnels begun. */
    public double tunnelsUsed() {
        return tunnelsUsed;
    }

    /** Settled females alive on day {@code d}. */
    public double nesting(int d) {
        return nesting[d];
    }

    /** Days held. */
    public int days() {
        return nesting.length;
    }
}
