package org.nestyear.core.advice.sight;

import java.util.Optional;
import org.nestyear.core.advice.Finding;
import org.nestyear.core.advice.Level;
import org.nestyear.core.advice.Phrase;
import org.nestyear.core.advice.Quantity;
import org.nestyear.core.advice.Unit;
import org.nestyear.core.source.ReadLog;

/** So few bees that none nesting is no wonder. */
final class TooFewRule implements SightRule {
    /** Settling females under which none may stay; numerical. */
    private static final double FEW = 5;

    @Override
    public Optional<Finding> find(SightCase sight) {
        double settlers = sight.sighting().settlers();
        if (!sight.nothingNests() || settlers >= FEW) {
            return Optional.empty();
        }
        ReadLog read = sight.read();
        read.row("settling");
        return Optional.of(new Finding(
                "too-few-bees",
                Level.WATCH,
                Phrase.of("With so few bees it may be that none stays."),
                Phrase.of("about {} females expected to settle", new Quantity(settlers, Unit.COUNT, 1)),
                null,
                Phrase.of("Look again in a week; more bees of local origin next year make it likelier."),
                null,
                read.read()));
    }
}
