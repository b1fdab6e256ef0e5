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

/** Looks whether tunnels run out, or none fit at all. */
public final class TunnelsFinding implements FindingRule {
    @Override
    public Optional<Finding> find(Situation s) {
        ReadLog read = s.read();
        double narrowest = read.value("hole_width_narrowest_mm");
        int usable = s.inputs().nests().stream()
                .filter(n -> n.holeWidthMm() >= narrowest)
                .mapToInt(Nests::count)
                .sum();
        if (usable > 0 && s.release().shareCapped() == 0) {
            return Optional.empty();
        }
        return Optional.of(new Finding(
                usable == 0 ? "no-tunnels" : "tunnels-run-out",
                Level.ACT,
                usable == 0
                        ? Phrase.of("There is no free tunnel that fits these bees: they will fly off.")
                        : Phrase.of(
                                "Tunnels run out in {} of the seasons tried.",
                                Quantity.share(s.release().shareCapped())),
                Phrase.of("{} free tunnels that fit", Quantity.count(usable)),
                Phrase.of(
                        "at least {} a house, {} wide",
                        Quantity.count(read.value("tunnels_least")),
                        Quantity.millimetres(read.value("hole_width_mm")).withDecimals(1)),
                Phrase.of("Add clean tunnels before the first females are out."),
                null,
                read.read()));
    }
}
