package org.nestyear.app.service;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import org.nestyear.core.losses.Cause;
import org.nestyear.core.losses.KillValues;
import org.nestyear.core.species.BeeKind;

/**
 * What was lost, and why.
 *
 * @param file a tally of opened nests
 * @param bees whose nests they are
 * @param bought true when the bees came from elsewhere this year
 * @param level coverage of the limits, above 0 and below 1
 * @param cause the cause by which groups are compared; null for all losses
 * @param rates base of the logarithm of k, or null when rates are not asked for
 */
public record LossesQuestion(
        Path file,
        BeeKind bees,
        boolean bought,
        double level,
        @Nullable Cause cause,
        KillValues.@Nullable Base rates) {}
