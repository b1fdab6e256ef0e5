package org.nestyear.core.advice.winter;

import java.util.Optional;
import org.nestyear.core.advice.Finding;
import org.nestyear.core.advice.Level;
import org.nestyear.core.advice.Phrase;
import org.nestyear.core.advice.Quantity;
import org.nestyear.core.source.ReadLog;

/** A fridge that reached the limit of chill: unsuitable even for short wintering (Bosch &amp; Kemp 2003). */
final class TooWarmRule implements WinterRule {
    @Override
    public Optional<Finding> find(WinterCheck check) {
        ReadLog read = check.read();
        double limit = read.value("chill_limit_c");
        if (!check.inFridge() || check.hottestC() < limit) {
            return Optional.empty();
        }
        boolean now = check.nowC() >= limit;
        return Optional.of(new Finding(
                "fridge-far-too-warm",
                now || check.tooWarmDays() >= 1 ? Level.ACT : Level.WATCH,
                now
                        ? Phrase.of("The store is too warm for wintering these bees.")
                        : Phrase.of("The store has been too warm at times."),
                Phrase.of(
                        "up to {}; {} at or above the limit",
                        Quantity.celsius(check.hottestC()).withDecimals(1),
                        Quantity.days(check.tooWarmDays()).withDecimals(1)),
                Phrase.of("below {}", Quantity.celsius(limit)),
                Phrase.of("Move them to the coldest steady part of a fridge, and look for what warmed them: the door,"
                        + " thawing, or a full shelf."),
                null,
                read.read()));
    }
}
