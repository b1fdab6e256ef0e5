package org.nestyear.app.service;

import java.nio.file.Path;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.nestyear.core.advice.winter.StoreAir;
import org.nestyear.core.advice.winter.WinterCheck;
import org.nestyear.core.season.Wintered;
import org.nestyear.core.species.Species;

/**
 * A winter store to be judged by its log.
 *
 * @param log the file
 * @param kept where they winter
 * @param before cold before the log began
 * @param cold first day of the cold where the log begins with the adults' autumn, or null
 * @param air air about them, or null
 */
public record WinterQuestion(
        Species species,
        Path log,
        Wintered kept,
        WinterCheck.Before before,
        @Nullable LocalDate cold,
        @Nullable StoreAir air) {}
