package org.nestyear.core.advice.rule;

import java.util.Optional;
import org.nestyear.core.advice.Finding;
import org.nestyear.core.advice.FindingRule;
import org.nestyear.core.advice.Level;
import org.nestyear.core.advice.Phrase;
import org.nestyear.core.advice.Quantity;
import org.nestyear.core.advice.Situation;
import org.nestyear.core.release.WholeBeeOdds;
import org.nestyear.core.source.ReadLog;

/** Gives whole-bee odds for a small stock. */
public final class SmallStockFinding implements FindingRule {
    @Override
    public Optional<Finding> find(Situation s) {
        ReadLog read = s.read();
        boolean small =
                s.batch().cocoons() < read.value("small_cocoons") || s.batch().females() < read.value("small_females");
        WholeBeeOdds odds = s.release().odds();
        if (!small || odds == null) {
            return Optional.empty();
        }
        read.value("settling");
        return Optional.of(new Finding(
                "small-stock",
                Level.WATCH,
                Phrase.of(
                        "With {} females there is a chance of {} that not one settles, and of {} that no daughter lives to"
                                + " next year; so all go out together.",
                        Quantity.count(s.batch().females()),
                        Quantity.share(odds.noneSettles()),
                        Quantity.share(odds.noDaughter())),
                Phrase.of(
                        "{} cocoons, {} of them female",
                        Quantity.count(s.batch().cocoons()),
                        Quantity.count(s.batch().females())),
                Phrase.of(
                        "{} cocoons and {} females",
                        Quantity.count(read.value("small_cocoons")),
                        Quantity.count(read.value("small_females"))),
                Phrase.of(
                        "Put them out in one go, close to the nests, and open no cocoon to look. Counted bee by bee, the"
                                + " middle of {} runs leaves {} daughters; one in ten leaves {} or fewer, one in ten {} or"
                                + " more.",
                        Quantity.count(odds.runs()),
                        Quantity.count(Math.rint(odds.daughtersMiddle())),
                        Quantity.count(Math.rint(odds.daughtersLow())),
                        Quantity.count(Math.rint(odds.daughtersHigh()))),
                null,
                read.read()));
    }
}
