package org.nestyear.core.advice.opening;

import java.util.Optional;
import org.nestyear.core.advice.Finding;
import org.nestyear.core.advice.Level;
import org.nestyear.core.advice.Phrase;
import org.nestyear.core.advice.Quantity;
import org.nestyear.core.losses.Cause;
import org.nestyear.core.source.ReadLog;

/** Birds and other robbers: a guard before the next flight. */
final class RobbedRule implements OpeningRule {
    @Override
    public Optional<Finding> find(OpeningCase opened) {
        if (opened.lost(Cause.ROBBED) == 0) {
            return Optional.empty();
        }
        ReadLog read = opened.read();
        return Optional.of(new Finding(
                "robbed",
                Level.ACT,
                Phrase.of(
                        "Birds, mice or ants took brood; birds made the one losing year of a six-year orchard record."),
                opened.seen(Cause.ROBBED),
                null,
                Phrase.of(
                        "Before the next flight put mesh of {} up, {} off the face. In winter keep nests in a tin with air"
                                + " holes, safe from mice; a greased post stops ants.",
                        Quantity.millimetres(read.value("guard_mesh_mm")),
                        Quantity.millimetres(read.value("guard_gap_mm"))),
                Phrase.of(
                        "A sound ladder on firm ground, and someone to hold it. No mesh in which a bird could be caught."),
                read.read()));
    }
}
