package org.nestyear.core.advice.opening;

import java.util.Optional;
import org.nestyear.core.advice.Finding;
import org.nestyear.core.advice.Level;
import org.nestyear.core.advice.Phrase;
import org.nestyear.core.advice.Quantity;
import org.nestyear.core.losses.Cause;
import org.nestyear.core.source.ReadLog;

/** Chalkbrood: take the cadavers out; what may be rinsed depends on what it is. */
final class ChalkbroodRule implements OpeningRule {
    @Override
    public Optional<Finding> find(OpeningCase opened) {
        if (opened.lost(Cause.CHALKBROOD) == 0) {
            return Optional.empty();
        }
        ReadLog read = opened.read();
        Phrase limit = opened.isMason()
                ? null
                : Phrase.of("above {}, the worst on record", Quantity.share(read.value("chalkbrood_worst_leafcutter")));
        return Optional.of(new Finding(
                "chalkbrood",
                Level.ACT,
                Phrase.of("Chalkbrood: its spores live for years and ride on bees that chew past dead grubs."),
                opened.seen(Cause.CHALKBROOD),
                limit,
                opened.isMason()
                        ? Phrase.of(
                                "Pick out every hard, chalky grub and bin it, sealed. These cocoons may now have the weak"
                                        + " bleach dip, at most {} minutes (see rinse --item cocoon). Empty gear is soaked"
                                        + " stronger (rinse --item gear). Guests are never rinsed. New liners or tubes for spring.",
                                Quantity.count(read.value("cocoon_dip_most_min")))
                        : Phrase.of(
                                "Pick out every hard, chalky grub and bin it, sealed. Leaf cells are never washed at home;"
                                        + " empty boards and trays may be dipped (rinse --item gear), and must dry fully."
                                        + " New liners each year: in one trial clean boards alone did not lower disease."),
                Phrase.of(
                        "Bleach: gloves, eye cover, open air, never with vinegar, another acid or ammonia. Dust: a fitted"
                                + " mask, and damp the debris."),
                read.read()));
    }
}
