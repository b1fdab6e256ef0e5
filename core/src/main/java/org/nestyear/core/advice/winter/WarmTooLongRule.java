package org.nestyear.core.advice.winter;

import java.util.Optional;
import org.nestyear.core.advice.Finding;
import org.nestyear.core.advice.Level;
import org.nestyear.core.advice.Phrase;
import org.nestyear.core.advice.Quantity;
import org.nestyear.core.source.ReadLog;

/** Days above the warmest store that served for long (Bosch &amp; Kemp 2003). */
final class WarmTooLongRule implements WinterRule {
    @Override
    public Optional<Finding> find(WinterCheck check) {
        ReadLog read = check.read();
        double days = read.value("fridge_warm_days");
        boolean over = check.warmDays() > days;
        if (!check.inFridge() || (!over && check.nowC() <= read.value("fridge_warm_c"))) {
            return Optional.empty();
        }
        return Optional.of(new Finding(
                over ? "fridge-too-warm-too-long" : "fridge-too-warm",
                Level.ACT,
                over
                        ? Phrase.of("Kept this warm for this long, cocoons burn their fat and bees die early.")
                        : Phrase.of("Warmer than any store in which these bees wintered well."),
                Phrase.of(
                        "{} on the last day; {} above {}",
                        Quantity.celsius(check.nowC()).withDecimals(1),
                        Quantity.days(check.warmDays()),
                        Quantity.celsius(read.value("fridge_high_c"))),
                Phrase.of(
                        "{} at most, and for {} at most",
                        Quantity.celsius(read.value("fridge_warm_c")),
                        Quantity.days(days)),
                Phrase.of("Turn the fridge down to {} now.", Quantity.celsius(read.value("fridge_high_c"))),
                null,
                read.read()));
    }
}
