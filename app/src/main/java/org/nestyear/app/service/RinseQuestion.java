package org.nestyear.app.service;

import org.jspecify.annotations.Nullable;
import org.nestyear.core.hygiene.Mixture;
import org.nestyear.core.hygiene.RinseItem;

/**
 * May this be rinsed with that?
 *
 * @param mixture bleach and water as told, or as worked out from a wanted strength
 * @param targetPpm the strength wanted, or null when the mixture was told
 * @param bottleMonths age of the bottle, or null when it is not known
 */
public record RinseQuestion(
        RinseItem item,
        Mixture mixture,
        @Nullable Double targetPpm,
        @Nullable Double bottleMonths) {}
