package org.nestyear.core.advice.sight;

import java.util.Optional;
import org.nestyear.core.advice.Finding;
import org.nestyear.core.advice.Level;
import org.nestyear.core.advice.Phrase;
import org.nestyear.core.advice.Quantity;
import org.nestyear.core.source.ReadLog;

/** Birds, ants and spiders at the house. */
final class RobbedRule implements SightRule {
    @Override
    public Optional<Finding> find(SightCase sight) {
        if (!sight.nothingNests()) {
            return Optional.empty();
        }
        ReadLog read = sight.read();
        return Optional.of(new Finding(
                "robbed",
                Level.NOTE,
                Phrase.of("Birds, ants or spiders may be taking them."),
                Phrase.of("pecked or pulled tubes, webs over the front, trails of ants"),
                null,
                Phrase.of(
                        "Mesh of {} held {} off the face keeps birds away; sweep webs off; a sticky or greased post stops ants.",
                        Quantity.millimetres(read.value("guard_mesh_mm")),
                        Quantity.millimetres(read.value("guard_gap_mm"))),
                Phrase.of("Use a sound ladder on firm ground, and have someone hold it. Never grease where bees land."),
                read.read()));
    }
}
