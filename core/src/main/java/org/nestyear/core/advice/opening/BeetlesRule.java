package org.nestyear.core.advice.opening;

import java.util.Optional;
import org.nestyear.core.advice.Finding;
import org.nestyear.core.advice.Level;
import org.nestyear.core.advice.Phrase;
import org.nestyear.core.advice.Quantity;
import org.nestyear.core.losses.Cause;
import org.nestyear.core.source.ReadLog;

/** Beetles that live on dead brood and stores. */
final class BeetlesRule implements OpeningRule {
    @Override
    public Optional<Finding> find(OpeningCase opened) {
        if (opened.lost(Cause.BEETLES) == 0) {
            return Optional.empty();
        }
        ReadLog read = opened.read();
        return Optional.of(new Finding(
                "beetles",
                Level.WATCH,
                Phrase.of("Hairy beetle larvae clean up dead brood, and go on into living cells in the store."),
                opened.seen(Cause.BEETLES),
                null,
                Phrase.of(
                        "Take out all debris and dead cells before winter, keep cocoons clean in a box with air holes behind mesh"
                                + " finer than {}, and look again in midwinter.",
                        Quantity.millimetres(read.value("wasp_mesh_mm"))),
                Phrase.of("Their hairs make skin and lungs itch: gloves and a dust mask."),
                read.read()));
    }
}
