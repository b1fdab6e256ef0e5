package org.nestyear.core.nesting;

import java.util.List;
import org.nestyear.core.season.Nests;
import org.nestyear.core.source.ParameterReader;

/**
 * The free tunnels of a site taken together.
 *
 * @param count free tunnels
 * @param cellsEach cells that fit in one, mean over the tunnels; above 0 when there are any
 * @param widthFactor factor on the daughter share for tunnels narrower than recommended, 0 to 1
 * @param daughterCap largest daughter share that the depth allows, 0 to 1
 */
public record TunnelStock(int count, double cellsEach, double widthFactor, double daughterCap) {

    /**
     * Sums up the nests. A tunnel holds (length − empty front) / cell length cells. Narrower than recommended, the
     * daughter share falls in a straight line to nothing at the narrowest; the front part of the recommended depth
     * holds sons, so a short tunnel has less room for daughters (SARE Handbook 11: daughters at the back; narrow or
     * short tunnels give more sons).
     */
    public static TunnelStock of(List<Nests> nests, ParameterReader parameters) {
        double width = parameters.value("hole_width_mm");
        double narrowest = parameters.value("hole_width_narrowest_mm");
        double depth = parameters.value("tunnel_length_mm");
        double cell = parameters.value("cell_length_mm");
        double empty = parameters.value("empty_front_mm");
        double most = parameters.value("cells_most_in_tunnel");
        double sonFront = parameters.value("son_front_share") * depth;
        int count = 0;
        double cells = 0;
        double daughtersByWidth = 0;
        double daughtersByDepth = 0;
        for (Nests row : nests) {
            double each = Math.max(0, Math.min(most, (row.lengthMm() - empty) / cell));
            double usable = row.holeWidthMm() < narrowest ? 0 : row.count();
            double weight = usable * each;
            count += (int) usable;
            cells += weight;
            daughtersByWidth += weight * clamp((row.holeWidthMm() - narrowest) / (width - narrowest));
            daughtersByDepth += weight * clamp((row.lengthMm() - sonFront) / (row.lengthMm() - empty));
        }
        if (cells <= 0) {
            return new TunnelStock(0, 1, 1, 1);
        }
        return new TunnelStock(count, cells / count, daughtersByWidth / cells, daughtersByDepth / cells);
    }

    private static double clamp(double share) {
        return Double.isNaN(share) ? 1 : Math.max(0, Math.min(1, share));
    }

    /** Share of daughters among the cells of a female {@code daysNesting} after she began, 0 to 1. */
    public double daughterShare(NestingSettings settings, int daysNesting) {
        double share = settings.daughterShare() - settings.daughterFall() * daysNesting;
        return share <= 0 ? 0 : Math.min(share, daughterCap) * widthFactor;
    }
}
