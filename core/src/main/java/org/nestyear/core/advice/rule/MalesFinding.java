package org.nestyear.core.advice.rule;

import java.util.Optional;
import org.nestyear.core.advice.Finding;
import org.nestyear.core.advice.FindingRule;
import org.nestyear.core.advice.Level;
import org.nestyear.core.advice.Phrase;
import org.nestyear.core.advice.Quantity;
import org.nestyear.core.advice.Situation;
import org.nestyear.core.source.ReadLog;

/** Looks whether a live male is about when females come out. */
public final class MalesFinding implements FindingRule {
    @Override
    public Optional<Finding> find(Situation s) {
        ReadLog read = s.read();
        double limit = read.value("unmated_share");
        double usual = read.value("males_per_female");
        if (s.batch().females() == 0 || s.outlook().unmated() < limit) {
            return Optional.empty();
        }
        boolean none = s.batch().males() == 0;
        return Optional.of(new Finding(
                none ? "no-males" : "few-males",
                Level.ACT,
                none
                        ? Phrase.of(
                                "There are no males in the batch: unless wild ones come, every egg will give a son.")
                        : Phrase.of(
                                "Too few males: {} of the females are likely to meet none alive, and lay sons only.",
                                Quantity.share(s.outlook().unmated())),
                Phrase.of(
                        "{} males for {} females",
                        Quantity.count(s.batch().males()),
                        Quantity.count(s.batch().females())),
                Phrase.of(
                        "{} males to a female are usual", Quantity.count(usual).withDecimals(1)),
                Phrase.of("Ask a keeper nearby for healthy local male cocoons of the same kind."
                        + " Do not throw away females for the sake of the ratio."),
                Phrase.of("Bees moved over a border may need a permit; ask your local authority."),
                read.read()));
    }
}
