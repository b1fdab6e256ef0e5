package org.nestyear.core.losses;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.ToIntFunction;
import org.nestyear.core.count.Limits;
import org.nestyear.core.count.NestTallies;
import org.nestyear.core.count.ShareLimits;
import org.nestyear.core.count.Tally;

/**
 * A share of the cells of several nests, with limits that allow for cells of a nest sharing a mother and a place.
 *
 * @param total cells found and cells in all
 * @param nests nests looked at, 1 or more
 * @param nestsWith nests that held any
 * @param designEffect how many times wider the variance is than with independent cells; empty with one nest, and when none or
 *     all were found
 * @param worth independent cells that say as much
 * @param limits Wilson's limits with those; where none was found, from 0 to the one-sided bound of independent cells
 * @param level coverage of the limits
 */
public record CellShare(
        Tally total, int nests, int nestsWith, OptionalDouble designEffect, Tally worth, Limits limits, double level) {

    /**
     * The share over these nests.
     *
     * @param nests one or more
     * @param found cells that count, of a nest
     * @param level coverage of the limits, above 0 and below 1
     */
    public static CellShare of(List<OpenedNest> nests, ToIntFunction<OpenedNest> found, double level) {
        return of(nests, found, OptionalDouble.empty(), level);
    }

    /**
     * The share over these nests, with the design effect of more nests than these where they have none of their own.
     *
     * @param spare design effect for one nest, or for none or all found; empty to take cells as independent then
     */
    static CellShare of(List<OpenedNest> nests, ToIntFunction<OpenedNest> found, OptionalDouble spare, double level) {
        List<Tally> tallies = new ArrayList<>();
        int with = 0;
        for (OpenedNest nest : nests) {
            int number = found.applyAsInt(nest);
            tallies.add(new Tally(number, nest.cells()));
            with += number > 0 ? 1 : 0;
        }
        if (tallies.isEmpty()) {
            throw new IllegalArgumentException("a share needs one nest or more");
        }
        OptionalDouble own = OptionalDouble.empty();
        Tally total = tallies.get(0);
        if (tallies.size() > 1) {
            NestTallies together = new NestTallies(tallies);
            total = together.total();
            own = together.designEffect();
        }
        OptionalDouble used = own.isPresent() ? own : spare;
        Tally worth = used.isPresent()
                ? NestTallies.worth(total, used.getAsDouble(), Math.max(2, nests.size()), level)
                : total;
        Limits limits = total.found() == 0 && used.isEmpty()
                ? new Limits(0, ShareLimits.noneFoundUpper(total.of(), level))
                : ShareLimits.wilson(worth, level);
        return new CellShare(total, nests.size(), with, own, worth, limits, level);
    }

    /** The share found, 0 to 1. */
    public double share() {
        return total.share();
    }

    /** Where none was found: the one-sided bound if the cells of a nest always share their fate. */
    public double noneFoundUpperByNest() {
        return ShareLimits.noneFoundUpper(nests, level);
    }

    /**
     * How the share stands to a level: above it, below it, or on both sides. Where nests show no spread, because there is one
     * or because none or all were found, each nest counts as one cell, so that few nests never claim much.
     */
    public Standing against(double other) {
        Limits held = designEffect.isPresent() ? limits : ShareLimits.wilson(new Tally(share() * nests, nests), level);
        if (held.low() > other) {
            return Standing.ABOVE;
        }
        return held.high() < other ? Standing.BELOW : Standing.OPEN;
    }

    /** How a share stands to a level. */
    public enum Standing {
        ABOVE,
        BELOW,
        OPEN
    }
}
