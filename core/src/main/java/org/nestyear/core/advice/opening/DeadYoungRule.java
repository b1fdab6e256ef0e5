package org.nestyear.core.advice.opening;

import java.util.Optional;
import org.nestyear.core.advice.Finding;
import org.nestyear.core.advice.Level;
import org.nestyear.core.advice.Phrase;
import org.nestyear.core.advice.Quantity;
import org.nestyear.core.losses.Cause;
import org.nestyear.core.source.ReadLog;

/** A pale grub in winter is not surely dead. */
final class DeadYoungRule implements OpeningRule {
    @Override
    public Optional<Finding> find(OpeningCase opened) {
        if (opened.lost(Cause.DEAD_YOUNG) == 0) {
            return Optional.empty();
        }
        ReadLog read = opened.read();
        boolean mason = opened.isMason();
        return Optional.of(new Finding(
                "pale-grubs",
                Level.WATCH,
                mason
                        ? Phrase.of(
                                "A pale grub in winter is not surely dead: some kinds winter as grubs or take two years.")
                        : Phrase.of("A pale grub in winter is what a living leafcutter is: it winters as a grub."),
                opened.seen(Cause.DEAD_YOUNG),
                Phrase.of(
                        "{} of cells living in the nests of one city",
                        Quantity.share(read.value("live_share_" + opened.bees().word()))),
                Phrase.of(
                        "Dead is what is dark and limp, shrunken, hard or mouldy. Put doubtful ones into a screened box and look"
                                + " again in summer; bin nothing that is plump and clean."),
                null,
                read.read()));
    }
}
