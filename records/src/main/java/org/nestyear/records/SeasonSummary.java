package org.nestyear.records;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * An opened season in a list.
 *
 * @param id made by the application
 * @param kind {@code demo}, {@code path} or {@code upload}
 * @param fileName name of the season file
 * @param folder its folder on this computer, or null when it came through the browser
 * @param openedAt when it was last made the current season
 */
public record SeasonSummary(
        String id, String kind, String fileName, @Nullable String folder, Instant openedAt) {}
