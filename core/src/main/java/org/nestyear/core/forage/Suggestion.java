package org.nestyear.core.forage;

import org.jspecify.annotations.Nullable;

/**
 * A plant that blooms in a gap.
 *
 * @param plant the plant
 * @param standing what it is in the region
 * @param bloom when it blooms there by its word
 * @param weeks weeks of the gap that it covers
 * @param areaM2 square metres in full flower that close those weeks in the middle reckoning, or null for leaves
 */
public record Suggestion(
        GardenPlant plant,
        Standing standing,
        BloomSpan bloom,
        int weeks,
        @Nullable Band areaM2) {}
