package org.nestyear.core.forage;

import org.jspecify.annotations.Nullable;
import org.nestyear.core.season.Plant;

/**
 * A told plant and what is reckoned of it.
 *
 * @param plant the plant as told
 * @param known the plant of the list, or null where its name is not there
 * @param weight how far it counts by its distance, 0 to 1
 * @param inTradeRing whether it stands within the trade's distance; a distance not told counts as within
 * @param yield what a square metre of it gives
 */
public record ToldFlowers(
        Plant plant, @Nullable GardenPlant known, double weight, boolean inTradeRing, FlowerYield yield) {
    /** True when it counts at all. */
    public boolean counts() {
        return weight > 0 && plant.coverM2() > 0 && !isDouble();
    }

    /** True for a plant whose flowers have no pollen to speak of. */
    public boolean isDouble() {
        return known != null && known.breeding() == Breeding.DOUBLE;
    }

    /** Cells a day it feeds in full bloom. */
    public Band cells() {
        return counts() ? yield.cellsM2().times(plant.coverM2() * weight) : Band.NONE;
    }
}
