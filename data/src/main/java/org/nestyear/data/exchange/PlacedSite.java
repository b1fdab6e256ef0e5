package org.nestyear.data.exchange;

import org.jspecify.annotations.Nullable;

/**
 * A site as files for others need it.
 *
 * @param id stable and the same in every file
 * @param name the keeper's name for it; written only where {@link Disclosure#names()}
 * @param at where it is
 * @param withinM how far from there it may be, m, above 0; null when not told
 * @param elevationM metres above sea level, or null when not told; written only with exact places, because a height
 *     narrows a cell down
 * @param facesDeg where the front looks, degrees clockwise from north, 0 to 360, or null when not told
 */
public record PlacedSite(
        String id,
        String name,
        Coordinates at,
        @Nullable Double withinM,
        @Nullable Double elevationM,
        @Nullable Double facesDeg) {
    /**
     * @throws IllegalArgumentException if the id is blank or a number is impossible
     */
    public PlacedSite {
        if (id.isBlank()) {
            throw new IllegalArgumentException("site \"" + name + "\" has no id");
        }
        if (withinM != null && !(withinM > 0 && withinM < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("a place known to within " + withinM + " m; that must be above 0");
        }
        if (elevationM != null && !Double.isFinite(elevationM)) {
            throw new IllegalArgumentException("elevation " + elevationM + " m is not a number");
        }
        if (facesDeg != null && !(facesDeg >= 0 && facesDeg <= 360)) {
            throw new IllegalArgumentException("facing " + facesDeg + " is outside 0 to 360 degrees");
        }
    }
}
