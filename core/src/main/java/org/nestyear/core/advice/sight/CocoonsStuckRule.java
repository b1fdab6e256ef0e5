package org.nestyear.core.advice.sight;

import java.util.Optional;
import org.nestyear.core.advice.Finding;
import org.nestyear.core.advice.Level;
import org.nestyear.core.advice.Phrase;
import org.nestyear.core.advice.Quantity;
import org.nestyear.core.source.ReadLog;

/** Nothing comes out when it should have. */
final class CocoonsStuckRule implements SightRule {
    /** Chance under which it is unusual; numerical. */
    private static final double UNUSUAL = 0.05;

    @Override
    public Optional<Finding> find(SightCase sight) {
        if (sight.nothingNests() || sight.sighting().chance() >= UNUSUAL) {
            return Optional.empty();
        }
        ReadLog read = sight.read();
        return Optional.of(new Finding(
                "look-into-the-box",
                Level.ACT,
                Phrase.of("By now more should be out."),
                Phrase.of(
                        "this would still be so in {}",
                        Quantity.share(sight.sighting().chance())),
                null,
                Phrase.of(
                        "Lift the lid at dusk. Cocoons with a round hole are empty: the bees left unseen. If all are whole,"
                                + " cut {} open at one end with care: a live bee moves its legs when breathed on. Ants, mould and a"
                                + " box in full sun are the usual culprits.",
                        Quantity.count(read.value("proof_cocoons_least"))),
                Phrase.of("Wear a dust mask, and mind the blade. Of a small stock cut none."),
                read.read()));
    }
}
