package org.nestyear.core.advice.winter;

import java.util.Optional;
import org.nestyear.core.advice.Finding;
import org.nestyear.core.advice.Level;
import org.nestyear.core.advice.Phrase;
import org.nestyear.core.advice.Quantity;
import org.nestyear.core.source.ReadLog;

/** Longer in the cold than was ever tested with success. */
final class TooLongRule implements WinterRule {
    @Override
    public Optional<Finding> find(WinterCheck check) {
        ReadLog read = check.read();
        double most = read.value("fridge_long_days");
        if (!check.inFridge() || check.coldDays() <= most) {
            return Optional.empty();
        }
        return Optional.of(new Finding(
                "fridge-too-long",
                Level.ACT,
                Phrase.of("Longer in the cold than was ever tested with success."),
                Phrase.of("{} since the cold began", Quantity.days(check.coldDays())),
                Phrase.of("{} at most", Quantity.days(most)),
                Phrase.of("Put them out as soon as bees can fly."),
                null,
                read.read()));
    }
}
