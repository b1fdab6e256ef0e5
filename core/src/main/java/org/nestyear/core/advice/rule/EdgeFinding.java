package org.nestyear.core.advice.rule;

import java.time.LocalDate;
import java.util.Optional;
import org.nestyear.core.advice.Finding;
import org.nestyear.core.advice.FindingRule;
import org.nestyear.core.advice.Level;
import org.nestyear.core.advice.Phrase;
import org.nestyear.core.advice.Situation;
import org.nestyear.core.release.Edge;
import org.nestyear.core.source.ReadLog;

/** Refuses to name a best date that lies at the end of the dates tried. */
public final class EdgeFinding implements FindingRule {
    @Override
    public Optional<Finding> find(Situation s) {
        Edge edge = s.release().window().edge();
        if (edge == Edge.NONE || s.choosesItself()) {
            return Optional.empty();
        }
        ReadLog read = s.read();
        boolean early = edge == Edge.EARLIER;
        LocalDate from = s.release().window().from();
        LocalDate to = s.release().window().to();
        double slight = read.value("window_slight_cost");
        boolean level = s.release().curve().stream()
                .filter(point -> point.date().equals(early ? to : from))
                .anyMatch(point -> point.cost() <= slight);
        if (level) {
            return Optional.empty();
        }
        LocalDate end = early ? from : to;
        return Optional.of(new Finding(
                "best-at-the-edge",
                Level.WATCH,
                early && end.equals(s.today())
                        ? Phrase.of("Of the days still open the first is the best: earlier would have been better.")
                        : Phrase.of(
                                "The best date lies at the end of those tried: under these assumptions {} is better.",
                                edge.word()),
                Phrase.of("{}", end),
                null,
                early
                        ? Phrase.of("Put them out as soon as you can.")
                        : Phrase.of("Check the bloom dates you gave: the curve still climbs at its end."),
                null,
                read.read()));
    }
}
