package org.nestyear.core.advice.sight;

import java.util.Optional;
import org.nestyear.core.advice.Finding;
import org.nestyear.core.advice.Level;
import org.nestyear.core.advice.Phrase;
import org.nestyear.core.advice.Quantity;
import org.nestyear.core.source.ReadLog;

/** Weather that keeps bees indoors. */
final class ColdDaysRule implements SightRule {
    /** Days without flight in a week that explain a wait; numerical. */
    private static final int MANY = 4;

    @Override
    public Optional<Finding> find(SightCase sight) {
        if (sight.sighting().flightless() < MANY) {
            return Optional.empty();
        }
        ReadLog read = sight.read();
        read.row("flight_air_c");
        return Optional.of(new Finding(
                "too-cold-to-fly",
                Level.WATCH,
                Phrase.of("The weather has kept them in."),
                Phrase.of(
                        "no flight on {} of the last seven days",
                        Quantity.count(sight.sighting().flightless())),
                null,
                Phrase.of("Sit tight: bees wait out a cold spell of some days. Do not warm or feed them."),
                null,
                read.read()));
    }
}
