package org.nestyear.core.advice.opening;

import java.util.Optional;
import org.nestyear.core.advice.Finding;
import org.nestyear.core.advice.Level;
import org.nestyear.core.advice.Phrase;
import org.nestyear.core.advice.Quantity;
import org.nestyear.core.losses.Cause;
import org.nestyear.core.source.ReadLog;

/** Cuckoo bees and wasps are part of the fauna. */
final class CuckoosRule implements OpeningRule {
    @Override
    public Optional<Finding> find(OpeningCase opened) {
        if (opened.lost(Cause.CUCKOOS) == 0) {
            return Optional.empty();
        }
        ReadLog read = opened.read();
        return Optional.of(new Finding(
                "cuckoos",
                Level.NOTE,
                Phrase.of(
                        "Cuckoo bees and cuckoo wasps belong to a living garden; they take cells, never a whole stock."),
                opened.seen(Cause.CUCKOOS),
                Phrase.of(
                        "{} of cells living in the nests of one city",
                        Quantity.share(read.value("live_share_" + opened.bees().word()))),
                Phrase.of(
                        "Leave them in peace. Where they take much year after year, keep their cocoons apart and let them fly"
                                + " elsewhere; do not chill, bag or wash them."),
                null,
                read.read()));
    }
}
