package org.nestyear.core.advice.rule;

import java.util.Optional;
import org.nestyear.core.advice.Finding;
import org.nestyear.core.advice.FindingRule;
import org.nestyear.core.advice.Level;
import org.nestyear.core.advice.Phrase;
import org.nestyear.core.advice.Quantity;
import org.nestyear.core.advice.Situation;
import org.nestyear.core.source.ReadLog;

/** Warns when the target bloom is over, or is likely to be over before the females fly. */
public final class MissedBloomFinding implements FindingRule {
    @Override
    public Optional<Finding> find(Situation s) {
        ReadLog read = s.read();
        double limit = read.value("missed_share");
        boolean past = s.outlook().targetBloomEnd().late().isBefore(s.today());
        if (!past && s.release().missedBloom() < limit) {
            return Optional.empty();
        }
        return Optional.of(new Finding(
                past ? "bloom-over" : "bloom-missed",
                past ? Level.ACT : Level.WATCH,
                past
                        ? Phrase.of("The target bloom is over; these bees can only work what flowers after it.")
                        : Phrase.of(
                                "In {} of the seasons tried the target bloom is over before half the females are out.",
                                Quantity.share(s.release().missedBloom())),
                Phrase.of(
                        "half the females out about {}",
                        s.outlook().halfFemales().middle()),
                Phrase.of("middle of bloom about {}", s.outlook().targetBloom().middle()),
                past
                        ? Phrase.of("Put them out at once if anything else is in flower; next year begin earlier.")
                        // Bosch & Blas 1994, Apidologie 25:265, abstract: 24 h of warmth did not help reliably.
                        : Phrase.of("Do not wait beyond the window. Warming them for a day first was tried and did not"
                                + " help reliably."),
                null,
                read.read()));
    }
}
