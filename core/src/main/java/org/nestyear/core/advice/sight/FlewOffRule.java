package org.nestyear.core.advice.sight;

import java.util.Optional;
import org.nestyear.core.advice.Finding;
import org.nestyear.core.advice.Level;
import org.nestyear.core.advice.Phrase;
import org.nestyear.core.advice.Quantity;
import org.nestyear.core.source.ReadLog;

/** Many females never nest where they came out. */
final class FlewOffRule implements SightRule {
    @Override
    public Optional<Finding> find(SightCase sight) {
        if (!sight.nothingNests()) {
            return Optional.empty();
        }
        ReadLog read = sight.read();
        double stay = read.value("settling");
        return Optional.of(new Finding(
                "flew-off",
                Level.NOTE,
                Phrase.of(
                        "Some always fly off: most of all from a box in the sun, far from the tunnels, or without bloom."),
                Phrase.of("about {} settle in a usual year", Quantity.share(stay)),
                null,
                Phrase.of(
                        "Keep the box shaded, beside the tunnels, and see that something is in flower within a short flight."),
                null,
                read.read()));
    }
}
