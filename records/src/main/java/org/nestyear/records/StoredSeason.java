package org.nestyear.records;

import java.time.Instant;
import org.jspecify.annotations.Nullable;
import org.nestyear.core.season.Goal;

/**
 * A season a keeper has opened.
 *
 * @param id made by the application
 * @param owner whose season it is
 * @param source where its text is
 * @param goal the aim chosen on the page, or null to follow the season file
 * @param openedAt when it was last made the current season
 * @param createdAt when it was first opened
 * @param changedAt when its row last changed
 */
public record StoredSeason(
        String id,
        String owner,
        SeasonSource source,
        @Nullable Goal goal,
        Instant openedAt,
        Instant createdAt,
        Instant changedAt) {
    StoredSeason withSource(SeasonSource other) {
        return new StoredSeason(id, owner, other, goal, openedAt, createdAt, changedAt);
    }
}
