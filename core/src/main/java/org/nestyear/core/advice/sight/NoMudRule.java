package org.nestyear.core.advice.sight;

import java.util.Optional;
import org.nestyear.core.advice.Finding;
import org.nestyear.core.advice.Level;
import org.nestyear.core.advice.Phrase;
import org.nestyear.core.advice.Quantity;
import org.nestyear.core.source.ReadLog;

/** Mason bees without wet mud cannot close a cell. */
final class NoMudRule implements SightRule {
    @Override
    public Optional<Finding> find(SightCase sight) {
        if (!sight.nothingNests()) {
            return Optional.empty();
        }
        ReadLog read = sight.read();
        return Optional.of(new Finding(
                "no-mud",
                Level.WATCH,
                Phrase.of("Without wet mud nearby they cannot build."),
                Phrase.of("look for a damp patch within {}", Quantity.metres(read.value("mud_distance_m"))),
                null,
                Phrase.of(
                        "Wet a patch of loam and scrape it open, every dry day; bees land on firm wet soil, not on water."),
                Phrase.of("Shallow mud only: no open water a child or a bee could drown in."),
                read.read()));
    }
}
