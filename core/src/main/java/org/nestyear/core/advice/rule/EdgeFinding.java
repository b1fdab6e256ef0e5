package org.nestyear.core.advice.rule;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.nestyear.core.advice.Finding;
import org.nestyear.core.advice.FindingRule;
import org.nestyear.core.advice.Level;
import org.nestyear.core.advice.Phrase;
import org.nestyear.core.advice.Situation;
import org.nestyear.core.release.Edge;

/** Refuses to name a best date that lies at the end of the dates tried. */
public final class EdgeFinding implements FindingRule {
    @Override
    public Optional<Finding> find(Situation s) {
        Edge edge = s.release().window().edge();
        if (edge == Edge.NONE) {
            return Optional.empty();
        }
        LocalDate end = edge == Edge.EARLIER
                ? s.release().window().from()
                : s.release().window().to();
        return Optional.of(new Finding(
                "best-at-the-edge",
                Level.WATCH,
                Phrase.of(
                        "The best date lies at the end of those tried: under these assumptions {} is better.",
                        edge.word()),
                Phrase.of("{}", end),
                null,
                edge == Edge.EARLIER
                        ? Phrase.of("Put them out as soon as you can.")
                        : Phrase.of("Check the bloom dates you gave: the curve still climbs at its end."),
                null,
                List.of()));
    }
}
