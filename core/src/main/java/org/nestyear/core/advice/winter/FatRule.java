package org.nestyear.core.advice.winter;

import java.util.Optional;
import org.nestyear.core.advice.Finding;
import org.nestyear.core.advice.Level;
import org.nestyear.core.advice.Phrase;
import org.nestyear.core.advice.Quantity;
import org.nestyear.core.source.ReadLog;

/** Most of what they can spend is spent. */
final class FatRule implements WinterRule {
    /** Share of the loss from which it is said; numerical. */
    private static final double MOST = 0.8;

    @Override
    public Optional<Finding> find(WinterCheck check) {
        ReadLog read = check.read();
        read.row("weight_loss_bearable_percent");
        if (check.spent() < MOST) {
            return Optional.empty();
        }
        return Optional.of(new Finding(
                "fat-nearly-spent",
                check.spent() >= 1 ? Level.ACT : Level.WATCH,
                check.spent() >= 1
                        ? Phrase.of("They have lost as much weight as bees were seen to bear.")
                        : Phrase.of("They have little left to live on."),
                Phrase.of(
                        "{} of the bearable loss; {} left at {}",
                        Quantity.share(check.spent()),
                        Quantity.days(Math.floor(check.fatDaysLeft())),
                        Quantity.celsius(check.nowC()).withDecimals(1)),
                null,
                Phrase.of("Keep them as cold as the store allows, and put them out with the first bloom."),
                null,
                read.read()));
    }
}
