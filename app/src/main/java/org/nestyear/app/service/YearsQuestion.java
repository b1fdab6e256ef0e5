package org.nestyear.app.service;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import org.nestyear.core.species.Species;

/**
 * How a stock may go on.
 *
 * @param file a table of the keeper's years
 * @param target female cocoons wanted; null for as many as there are
 * @param by spring in which they are wanted; null for five springs after the last of the table
 * @param buy females bought before each spring after the first
 * @param give females given away before each spring after the first
 * @param tunnels tunnels that may be filled at most; null for no limit
 * @param femalePrice price of a female cocoon in the keeper's money, or null
 * @param tunnelPrice price of a tunnel, or null
 */
public record YearsQuestion(
        Path file,
        Species species,
        @Nullable Integer target,
        @Nullable Integer by,
        int buy,
        int give,
        @Nullable Integer tunnels,
        @Nullable Double femalePrice,
        @Nullable Double tunnelPrice) {}
