package org.nestyear.core.advice.rule;

import java.util.Optional;
import org.nestyear.core.advice.Finding;
import org.nestyear.core.advice.FindingRule;
import org.nestyear.core.advice.Level;
import org.nestyear.core.advice.Phrase;
import org.nestyear.core.advice.Quantity;
import org.nestyear.core.advice.Situation;
import org.nestyear.core.source.ReadLog;

/** Warns when bees are likely to come out in the store before they are put out. */
public final class LostInStoreFinding implements FindingRule {
    @Override
    public Optional<Finding> find(Situation s) {
        ReadLog read = s.read();
        double limit = read.value("in_store_share");
        double females = s.outlook().lostInStore();
        double males = s.outlook().malesLostInStore();
        if (Math.max(females, males) < limit) {
            return Optional.empty();
        }
        return Optional.of(new Finding(
                "out-in-the-store",
                Level.ACT,
                Phrase.of(
                        "{} of the females and {} of the males are likely to leave their cocoons before they are put out.",
                        Quantity.share(females),
                        Quantity.share(males)),
                Phrase.of("{}", Quantity.share(Math.max(females, males))),
                Phrase.of("{}", Quantity.share(limit)),
                Phrase.of(
                        "Look at them today; move them to {} or colder, or put them out earlier.",
                        Quantity.celsius(read.value("fridge_high_c"))),
                null,
                read.read()));
    }
}
