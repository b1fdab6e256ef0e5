package org.nestyear.core.forage;

import java.time.LocalDate;

/**
 * One week of the nesting season: cells the bees could build were food no limit, and cells the flowers can feed.
 *
 * @param from its Monday
 * @param to its Sunday
 * @param cells cells wanted, above 0
 * @param fromPlants cells that the told plants can feed
 * @param fromOther cells that the other bloom feeds, as told: its level is itself a share of the bees
 */
public record ForageWeek(LocalDate from, LocalDate to, double cells, Band fromPlants, double fromOther) {
    public ForageWeek {
        if (!(cells > 0) || !(fromOther >= 0)) {
            throw new IllegalArgumentException(
                    "a week needs cells above 0 and other bloom from 0 on, got " + cells + " and " + fromOther);
        }
    }

    /** Cells that all flowers can feed. */
    public Band supply() {
        return fromPlants.plus(new Band(fromOther, fromOther, fromOther));
    }

    /** Supply over demand. */
    public Band ratio() {
        return supply().times(1 / cells);
    }

    /** How the week stands. */
    public Fed fed() {
        Band ratio = ratio();
        if (ratio.low() >= 1) {
            return Fed.ENOUGH;
        }
        if (ratio.middle() >= 1) {
            return Fed.LIKELY_ENOUGH;
        }
        return ratio.high() >= 1 ? Fed.LIKELY_SHORT : Fed.SHORT;
    }

    /** Cells that go without in the middle reckoning, 0 or more. */
    public double lacking() {
        return Math.max(0, cells - supply().middle());
    }
}
