package org.nestyear.core.season;

import org.jspecify.annotations.Nullable;

/**
 * What a plant is and where it stands, as far as the keeper told.
 *
 * @param species its common or Latin name in the plant list, or null when the keeper's own name is to be looked up
 * @param distanceM metres from the nests, 0 or more, or null when not told
 * @param flowersM2 open flowers (heads or catkins where those are counted) a square metre in full bloom, counted by the
 *     keeper, above 0, or null when not counted
 * @param fromWord whether its dates were made from a bloom word of its region, for want of the keeper's own
 */
public record PlantStand(
        @Nullable String species,
        @Nullable Double distanceM,
        @Nullable Double flowersM2,
        boolean fromWord) {
    /** Nothing told. */
    public static final PlantStand UNTOLD = new PlantStand(null, null, null, false);

    public PlantStand {
        if (distanceM != null && !(distanceM >= 0)) {
            throw new IllegalArgumentException("a distance is 0 m or more, got " + distanceM);
        }
        if (flowersM2 != null && !(flowersM2 > 0)) {
            throw new IllegalArgumentException("flowers a square metre are above 0, got " + flowersM2);
        }
    }
}
