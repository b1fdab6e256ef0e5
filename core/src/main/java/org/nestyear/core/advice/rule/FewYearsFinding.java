package org.nestyear.core.advice.rule;

import java.util.Optional;
import org.nestyear.core.advice.Finding;
import org.nestyear.core.advice.FindingRule;
import org.nestyear.core.advice.Level;
import org.nestyear.core.advice.Phrase;
import org.nestyear.core.advice.Quantity;
import org.nestyear.core.advice.Situation;
import org.nestyear.core.source.ReadLog;

/** Says how few real weather years stand behind the answer. */
public final class FewYearsFinding implements FindingRule {
    @Override
    public Optional<Finding> find(Situation s) {
        ReadLog read = s.read();
        double enough = read.value("few_years");
        read.value("members_least");
        if (s.realYears() >= enough) {
            return Optional.empty();
        }
        return Optional.of(new Finding(
                "few-years",
                Level.WATCH,
                Phrase.of(
                        "Only {} past years of weather stand behind this, so it names a window and not a day. Beside them"
                                + " weather invented after the record is run, which counts as no year.",
                        Quantity.count(s.realYears())),
                Phrase.of("{} years", Quantity.count(s.realYears())),
                Phrase.of("{} years", Quantity.count(enough)),
                Phrase.of("Add older years of the same station to the weather file."),
                null,
                read.read()));
    }
}
