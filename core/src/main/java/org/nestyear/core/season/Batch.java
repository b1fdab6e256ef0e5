package org.nestyear.core.season;

import org.jspecify.annotations.Nullable;

/**
 * Bees of one species, origin and year kept together.
 *
 * @param species Latin name
 * @param origin {@code local} or a place name
 * @param females female cocoons, 0 or more
 * @param males male cocoons, 0 or more; a batch holds at least one cocoon
 * @param wintered where they spent the winter
 * @param chillDays days cold so far, counted on the day of the plan; only for the fridge, else null
 * @param chillC temperature of the cold store, °C; only for the fridge, else null
 */
public record Batch(
        String species,
        String origin,
        int females,
        int males,
        Wintered wintered,
        @Nullable Double chillDays,
        @Nullable Double chillC) {
    public Batch {
        if (females < 0 || males < 0 || females + males == 0) {
            throw new IllegalArgumentException(
                    "a batch of " + females + " females and " + males + " males holds no bees to plan for");
        }
        if (wintered == Wintered.FRIDGE && (chillDays == null || chillC == null)) {
            throw new IllegalArgumentException("a batch wintered in the fridge needs its days and its temperature");
        }
    }

    /** Cocoons of both sexes. */
    public int cocoons() {
        return females + males;
    }
}
