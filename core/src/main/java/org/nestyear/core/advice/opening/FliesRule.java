package org.nestyear.core.advice.opening;

import java.util.Optional;
import org.nestyear.core.advice.Finding;
import org.nestyear.core.advice.Level;
import org.nestyear.core.advice.Phrase;
import org.nestyear.core.advice.Quantity;
import org.nestyear.core.losses.Cause;
import org.nestyear.core.source.ReadLog;

/** Maggots of thieving flies: they come out with the bees, so they go before spring. */
final class FliesRule implements OpeningRule {
    @Override
    public Optional<Finding> find(OpeningCase opened) {
        if (opened.lost(Cause.FLIES) == 0) {
            return Optional.empty();
        }
        ReadLog read = opened.read();
        return Optional.of(new Finding(
                "houdini-fly",
                Level.ACT,
                Phrase.of(
                        "Maggots of the houdini fly eat the food; they winter in the nest and come out with the bees."),
                opened.seen(Cause.FLIES),
                opened.isMason()
                        ? Phrase.of(
                                "{} of cells, which flies and mites seldom pass in wild stock",
                                Quantity.share(read.value("mites_flies_most_mason")))
                        : null,
                Phrase.of(
                        "Crush the maggots when you harvest: white, sticky clusters among orange threads of droppings. Nests"
                                + " that cannot be opened go into a bag of mesh finer than {} at spring, where flies are killed"
                                + " and bees let out. In flight time crush slow, red-eyed flies sitting at the holes.",
                        Quantity.millimetres(read.value("wasp_mesh_mm"))),
                OpeningCase.DUST,
                read.read()));
    }
}
