package org.nestyear.core.place;

import java.time.ZoneId;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A place where bees are kept.
 *
 * @param name the keeper's name for it
 * @param latitudeDeg degrees north, −90 to 90
 * @param longitudeDeg degrees east, −180 to 180
 * @param elevationM metres above sea level, −430 to 6000
 * @param zone time zone of the clocks there
 * @param facesDeg where the house front looks, degrees clockwise from north, or null when not told
 * @param horizon sighted points of the skyline, in order of azimuth; empty means a flat horizon
 * @param roof what reaches out over the house front, or null when nothing does or it was not told
 * @param region the keeper's word for the part of the world, or null when not told
 */
public record Site(
        String name,
        double latitudeDeg,
        double longitudeDeg,
        double elevationM,
        ZoneId zone,
        @Nullable Double facesDeg,
        List<HorizonPoint> horizon,
        @Nullable Overhang roof,
        @Nullable Region region) {
    private static final double LOWEST_LAND_M = -430;
    private static final double HIGHEST_GARDEN_M = 6000;
    private static final double TURN_DEG = 360;

    public Site {
        check("latitude", latitudeDeg, -90, 90, "degrees");
        check("longitude", longitudeDeg, -180, 180, "degrees");
        check("elevation", elevationM, LOWEST_LAND_M, HIGHEST_GARDEN_M, "m");
        if (facesDeg != null) {
            check("facing", facesDeg, 0, TURN_DEG, "degrees");
        }
        horizon = List.copyOf(horizon);
        for (int i = 1; i < horizon.size(); i++) {
            if (!(horizon.get(i - 1).azimuthDeg() < horizon.get(i).azimuthDeg())) {
                throw new IllegalArgumentException("horizon azimuth "
                        + horizon.get(i).azimuthDeg() + " does not come after "
                        + horizon.get(i - 1).azimuthDeg() + " degrees; list the points clockwise, each once");
            }
        }
    }

    /** A site without a roof over its front, whose region is not told. */
    public Site(
            String name,
            double latitudeDeg,
            double longitudeDeg,
            double elevationM,
            ZoneId zone,
            @Nullable Double facesDeg,
            List<HorizonPoint> horizon) {
        this(name, latitudeDeg, longitudeDeg, elevationM, zone, facesDeg, horizon, null, null);
    }

    /** True north of the equator, and on it. */
    public boolean isNorthern() {
        return latitudeDeg >= 0;
    }

    /**
     * Height of the skyline in one direction, degrees: on a straight line between the two sighted points beside it, going
     * round through north; level all round when nothing was sighted.
     *
     * @param azimuthDeg degrees clockwise from north, 0 to 360
     */
    public double horizonDeg(double azimuthDeg) {
        check("azimuth", azimuthDeg, 0, TURN_DEG, "degrees");
        if (horizon.isEmpty()) {
            return 0;
        }
        double azimuth = azimuthDeg == TURN_DEG ? 0 : azimuthDeg;
        HorizonPoint before = horizon.get(horizon.size() - 1);
        double beforeDeg = before.azimuthDeg() - TURN_DEG;
        for (HorizonPoint after : horizon) {
            if (azimuth < after.azimuthDeg()) {
                return between(before, beforeDeg, after, after.azimuthDeg(), azimuth);
            }
            before = after;
            beforeDeg = after.azimuthDeg();
        }
        HorizonPoint first = horizon.get(0);
        return between(before, beforeDeg, first, first.azimuthDeg() + TURN_DEG, azimuth);
    }

    private static double between(
            HorizonPoint before, double beforeDeg, HorizonPoint after, double afterDeg, double azimuthDeg) {
        double share = (azimuthDeg - beforeDeg) / (afterDeg - beforeDeg);
        return before.elevationDeg() + share * (after.elevationDeg() - before.elevationDeg());
    }

    private static void check(String what, double value, double low, double high, String unit) {
        if (!(value >= low && value <= high)) {
            throw new IllegalArgumentException(what + " " + value + " is outside " + low + " to " + high + " " + unit);
        }
    }
}
