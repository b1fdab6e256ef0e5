package org.nestyear.core.advice.opening;

import java.util.Optional;
import org.nestyear.core.advice.Finding;
import org.nestyear.core.advice.Level;
import org.nestyear.core.advice.Phrase;
import org.nestyear.core.advice.Quantity;
import org.nestyear.core.source.ReadLog;

/** What came from elsewhere stays apart for a season. */
final class QuarantineRule implements OpeningRule {
    @Override
    public Optional<Finding> find(OpeningCase opened) {
        if (!opened.bought()) {
            return Optional.empty();
        }
        ReadLog read = opened.read();
        double all = read.value("nests_look_all");
        return Optional.of(new Finding(
                "quarantine",
                Level.ACT,
                Phrase.of("Bees from elsewhere can bring mites, flies and chalkbrood that your place does not have."),
                Phrase.of(
                        "{} nests of bought stock",
                        Quantity.count(opened.losses().nests().size())),
                Phrase.of("looking at all when fewer than {}", Quantity.count(all)),
                Phrase.of(
                        "Keep them a full season in a house of their own, away from your other nests, in clean gear; look at all"
                                + " their nests in autumn; join them only when nothing was found."),
                Phrase.of(
                        "Buy loose cocoons or cells of local stock, not filled blocks; ask the seller where and when they grew."),
                read.read()));
    }
}
