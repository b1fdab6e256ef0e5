package org.nestyear.core.advice.opening;

import java.util.Optional;
import org.nestyear.core.advice.Finding;
import org.nestyear.core.advice.Level;
import org.nestyear.core.advice.Phrase;
import org.nestyear.core.advice.Quantity;
import org.nestyear.core.source.ReadLog;

/** A handbook looks at a tenth of the nests, and at all of them when a tenth of those are ill. */
final class NestsIllRule implements OpeningRule {
    @Override
    public Optional<Finding> find(OpeningCase opened) {
        ReadLog read = opened.read();
        int ill = opened.losses().nestsIll();
        int nests = opened.losses().nests().size();
        double most = read.value("nests_open_all_share");
        if (ill == 0 || ill <= most * nests) {
            return Optional.empty();
        }
        double all = read.value("nests_look_all");
        return Optional.of(new Finding(
                "many-nests-ill",
                Level.ACT,
                Phrase.of("Disease or parasites sit in more nests than a handbook lets pass."),
                Phrase.of("{} of {} nests", Quantity.count(ill), Quantity.count(nests)),
                Phrase.of("{} of the nests looked at", Quantity.share(most)),
                Phrase.of(
                        "Look at every nest of this lot, not a part; with fewer than {} nests that is the rule anyway. Looking"
                                + " means taking the nest apart; it does not mean cutting cocoons open.",
                        Quantity.count(all)),
                OpeningCase.DUST,
                read.read()));
    }
}
