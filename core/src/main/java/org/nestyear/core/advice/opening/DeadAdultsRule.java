package org.nestyear.core.advice.opening;

import java.util.Optional;
import org.nestyear.core.advice.Finding;
import org.nestyear.core.advice.Level;
import org.nestyear.core.advice.Phrase;
import org.nestyear.core.advice.Quantity;
import org.nestyear.core.losses.Cause;
import org.nestyear.core.source.ReadLog;

/** Adults dead in the cocoon: the winter store is the first suspect. */
final class DeadAdultsRule implements OpeningRule {
    @Override
    public Optional<Finding> find(OpeningCase opened) {
        if (opened.lost(Cause.DEAD_ADULTS) == 0) {
            return Optional.empty();
        }
        ReadLog read = opened.read();
        return Optional.of(new Finding(
                "dead-adults",
                Level.WATCH,
                Phrase.of(
                        "Adults died in their cocoons: a warm autumn or store, a long one, or dry air are the usual causes."),
                opened.seen(Cause.DEAD_ADULTS),
                Phrase.of("0 °C to {} in the fridge", Quantity.celsius(read.value("fridge_high_c"))),
                Phrase.of(
                        "Hold the log of the store against the limits (see winter), and begin the cold earlier where autumn was warm."),
                null,
                read.read()));
    }
}
