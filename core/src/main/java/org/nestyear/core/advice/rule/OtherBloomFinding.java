package org.nestyear.core.advice.rule;

import java.util.Optional;
import org.nestyear.core.advice.Finding;
import org.nestyear.core.advice.FindingRule;
import org.nestyear.core.advice.Level;
import org.nestyear.core.advice.Phrase;
import org.nestyear.core.advice.Quantity;
import org.nestyear.core.advice.Situation;
import org.nestyear.core.source.ReadLog;

/** Asks for the other bloom in reach when the keeper did not tell it. */
public final class OtherBloomFinding implements FindingRule {
    @Override
    public Optional<Finding> find(Situation s) {
        if (s.inputs().community() != null) {
            return Optional.empty();
        }
        ReadLog read = s.read();
        double lead = read.value("community_lead_days");
        double level = read.value("community_level");
        read.value("community_end_day");
        return Optional.of(new Finding(
                "other-bloom-unknown",
                Level.WATCH,
                Phrase.of("You did not say what else flowers nearby, and the date hangs on it."),
                Phrase.of(
                        "taken: from {} before the fruit bloom, at {} of plenty, to the end of June",
                        Quantity.days(lead),
                        Quantity.share(level)),
                null,
                Phrase.of(
                        "What flowers within {} before and after the target plants, and until when? Add it under [[community]].",
                        Quantity.metres(read.value("forage_radius_m"))),
                null,
                read.read()));
    }
}
