package org.nestyear.core.advice.rule;

import java.util.Optional;
import org.nestyear.core.advice.Finding;
import org.nestyear.core.advice.FindingRule;
import org.nestyear.core.advice.Level;
import org.nestyear.core.advice.Phrase;
import org.nestyear.core.advice.Quantity;
import org.nestyear.core.advice.Situation;
import org.nestyear.core.source.ReadLog;

/** Looks at the balance of the young: sons against daughters, and daughters against the females put out. */
public final class FewDaughtersFinding implements FindingRule {
    @Override
    public Optional<Finding> find(Situation s) {
        if (s.batch().females() == 0 || s.outlook().daughters() >= s.batch().females()) {
            return Optional.empty();
        }
        ReadLog read = s.read();
        read.value("settling");
        read.value("daughter_share");
        read.value("cell_survival");
        return Optional.of(new Finding(
                "fewer-than-put-out",
                Level.WATCH,
                Phrase.of(
                        "Expect fewer daughters than the females you put out: about {} for {}, unless more settle or wild ones join.",
                        Quantity.count(Math.rint(s.outlook().daughters())),
                        Quantity.count(s.batch().females())),
                Phrase.of(
                        "{} to {} surviving daughters",
                        Quantity.count(Math.rint(s.outlook().daughtersLow())),
                        Quantity.count(Math.rint(s.outlook().daughtersHigh()))),
                Phrase.of("{} females", Quantity.count(s.batch().females())),
                Phrase.of(
                        "What helps most: food to the end of nesting, mud close by, and release boxes right at the nests."),
                null,
                read.read()));
    }
}
