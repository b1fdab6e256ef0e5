package org.nestyear.core.advice.winter;

import java.util.Optional;
import org.nestyear.core.advice.Finding;
import org.nestyear.core.advice.Level;
import org.nestyear.core.advice.Phrase;
import org.nestyear.core.advice.Quantity;
import org.nestyear.core.source.ReadLog;

/** Colder than any store that was tested. */
final class TooColdRule implements WinterRule {
    @Override
    public Optional<Finding> find(WinterCheck check) {
        ReadLog read = check.read();
        double low = read.value("fridge_low_c");
        if (!check.inFridge() || check.coldestC() >= low - 1) {
            return Optional.empty();
        }
        return Optional.of(new Finding(
                "fridge-colder-than-tested",
                Level.WATCH,
                Phrase.of("Colder than the range that was tested."),
                Phrase.of("down to {}", Quantity.celsius(check.coldestC()).withDecimals(1)),
                Phrase.of("{} to {}", Quantity.celsius(low), Quantity.celsius(read.value("fridge_high_c"))),
                Phrase.of("Keep them just above freezing, away from the cold plate; never thaw and freeze again."),
                null,
                read.read()));
    }
}
