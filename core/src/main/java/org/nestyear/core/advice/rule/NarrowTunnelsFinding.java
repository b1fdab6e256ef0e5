package org.nestyear.core.advice.rule;

import java.util.Optional;
import org.nestyear.core.advice.Finding;
import org.nestyear.core.advice.FindingRule;
import org.nestyear.core.advice.Level;
import org.nestyear.core.advice.Phrase;
import org.nestyear.core.advice.Quantity;
import org.nestyear.core.advice.Situation;
import org.nestyear.core.season.Nests;
import org.nestyear.core.source.ReadLog;

/** Looks for tunnels narrower or shorter than the bees need for daughters. */
public final class NarrowTunnelsFinding implements FindingRule {
    @Override
    public Optional<Finding> find(Situation s) {
        ReadLog read = s.read();
        double width = read.value("hole_width_mm");
        double length = read.value("tunnel_length_mm");
        double slack = read.value("tunnel_length_slack_mm");
        Optional<Nests> bad = s.inputs().nests().stream()
                .filter(n -> n.count() > 0 && (n.holeWidthMm() < width || n.lengthMm() < length - slack))
                .findFirst();
        return bad.map(n -> new Finding(
                "tunnels-too-small",
                Level.WATCH,
                Phrase.of("Narrow or short tunnels give more sons than daughters."),
                Phrase.of(
                        "{} tunnels {} wide and {} deep",
                        Quantity.count(n.count()),
                        Quantity.millimetres(n.holeWidthMm()).withDecimals(1),
                        Quantity.millimetres(n.lengthMm())),
                Phrase.of(
                        "{} wide and {} deep",
                        Quantity.millimetres(width).withDecimals(1),
                        Quantity.millimetres(length)),
                Phrase.of("Next time choose wider or deeper ones; leave these hanging this year."),
                null,
                read.read()));
    }
}
