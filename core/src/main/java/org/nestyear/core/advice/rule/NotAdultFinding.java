package org.nestyear.core.advice.rule;

import java.util.Optional;
import org.nestyear.core.advice.Finding;
import org.nestyear.core.advice.FindingRule;
import org.nestyear.core.advice.Level;
import org.nestyear.core.advice.Phrase;
import org.nestyear.core.advice.Quantity;
import org.nestyear.core.advice.Situation;
import org.nestyear.core.brood.BroodOutlook;
import org.nestyear.core.source.ReadLog;

/** Warns where summers are too cool for the last brood to become adult before winter. */
public final class NotAdultFinding implements FindingRule {
    @Override
    public Optional<Finding> find(Situation s) {
        BroodOutlook brood = s.brood();
        if (brood == null || brood.adultLate() != null) {
            return Optional.empty();
        }
        ReadLog read = s.read();
        s.brood(read);
        return Optional.of(new Finding(
                "late-brood-not-adult",
                Level.WATCH,
                Phrase.of("The last brood may not be adult before winter."),
                Phrase.of(
                        "not adult in {} of the cases, over {} summers",
                        Quantity.share(brood.notAdult()),
                        Quantity.count(brood.summers())),
                null,
                Phrase.of(
                        "Keep the newest tunnels apart, at summer warmth outdoors and no warmer, and chill nothing before a"
                                + " look proves it adult."),
                null,
                read.read()));
    }
}
