package org.nestyear.core.stocking;

import java.util.List;
import org.nestyear.core.nesting.TunnelStock;
import org.nestyear.core.season.NestKind;
import org.nestyear.core.season.Nests;
import org.nestyear.core.source.Parameter;
import org.nestyear.core.source.ReadLog;

/**
 * How many tunnels some females want.
 *
 * @param used tunnels they are expected to fill
 * @param needed tunnels to hang, so that none of them flies off for want of one
 * @param high tunnels with a generous choice
 * @param holeWidthMm recommended inner width, mm
 * @param lengthMm recommended depth, mm
 * @param cellsEach cells that fit in one
 */
public record TunnelNeed(
        double used, double needed, double high, double holeWidthMm, double lengthMm, double cellsEach) {

    /**
     * The need. {@code used} is expected females × cells a female × 1/cells a tunnel; {@code needed} is two tunnels (common
     * practice) for each female of the most that may nest, or the fewest a house should hold if that is more, as in a plan.
     *
     * @param expected females expected to nest, 0 or more
     * @param most females that may nest at most, not below {@code expected}
     * @param cellsPerFemale id of the row with the cells a female builds
     * @param read rows of the species and of stocking
     */
    public static TunnelNeed of(double expected, double most, String cellsPerFemale, ReadLog read) {
        if (!(expected >= 0 && expected <= most)) {
            throw new IllegalArgumentException(
                    "females that nest are 0 or more and at most those that may, got " + expected + " and " + most);
        }
        double width = read.value("hole_width_mm");
        double length = read.value("tunnel_length_mm");
        Nests one = new Nests(NestKind.TUBE, true, width, length, 1);
        double cellsEach = TunnelStock.of(List.of(one), read).cellsEach();
        Parameter perFemale = read.row("tunnels_per_female");
        double least = read.value("tunnels_least");
        double used = Spread.up(expected * read.value(cellsPerFemale) / cellsEach);
        double needed = Math.max(Math.max(least, used), Spread.up(most * perFemale.value()));
        double high = Math.max(needed, Spread.up(most * perFemale.high()));
        return new TunnelNeed(used, needed, high, width, length, cellsEach);
    }
}
