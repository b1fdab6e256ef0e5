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
 */
public record Site(
        String name,
        double latitudeDeg,
        double longitudeDeg,
        double elevationM,
        ZoneId zone,
        @Nullable Double facesDeg,
        List<HorizonPoint> horizon) {
    private static final double LOWEST_LAND_M = -430;
    private static final double HIGHEST_GARDEN_M = 6000;

    public Site {
        check("latitude", latitudeDeg, -90, 90, "degrees");
        check("longitude", longitudeDeg, -180, 180, "degrees");
        check("elevation", elevationM, LOWEST_LAND_M, HIGHEST_GARDEN_M, "m");
        if (facesDeg != null) {
            check("facing", facesDeg, 0, 360, "degrees");
        }
        horizon = List.copyOf(horizon);
    }

    /** True north of the equator, and on it. */
    public boolean isNorthern() {
        return latitudeDeg >= 0;
    }

    private static void check(String what, double value, double low, double high, String unit) {
        if (!(value >= low && value <= high)) {
            throw new IllegalArgumentException(what + " " + value + " is outside " + low + " to " + high + " " + unit);
        }
    }
}
