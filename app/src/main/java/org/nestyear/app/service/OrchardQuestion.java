package org.nestyear.app.service;

import org.jspecify.annotations.Nullable;
import org.nestyear.core.species.Species;

/**
 * How many bees for an orchard.
 *
 * @param crop in a word, such as apple
 * @param squareMetres its area, or null when trees are told
 * @param trees its trees, or null when the area is told
 * @param squareMetresPerTree floor that each tree has, or null when it is not known
 */
public record OrchardQuestion(
        Species species,
        String crop,
        @Nullable Double squareMetres,
        @Nullable Integer trees,
        @Nullable Double squareMetresPerTree) {}
