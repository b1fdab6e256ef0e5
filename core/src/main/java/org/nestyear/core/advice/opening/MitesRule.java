package org.nestyear.core.advice.opening;

import java.util.Optional;
import org.nestyear.core.advice.Finding;
import org.nestyear.core.advice.Level;
import org.nestyear.core.advice.Phrase;
import org.nestyear.core.advice.Quantity;
import org.nestyear.core.losses.Cause;
import org.nestyear.core.source.ReadLog;

/** Pollen mites: open and clean, never heat or bleach what is alive. */
final class MitesRule implements OpeningRule {
    @Override
    public Optional<Finding> find(OpeningCase opened) {
        if (opened.lost(Cause.MITES) == 0) {
            return Optional.empty();
        }
        ReadLog read = opened.read();
        boolean mason = opened.isMason();
        double heat = read.value("dry_heat_c");
        return Optional.of(new Finding(
                "mites",
                Level.ACT,
                Phrase.of("Mites eat the food of grubs and ride out on the bees; a sound mud wall stops them."),
                opened.seen(Cause.MITES),
                mason
                        ? Phrase.of(
                                "{} of cells, which mites and flies seldom pass in wild stock, and {} a year where nothing is done",
                                Quantity.share(read.value("mites_flies_most_mason")),
                                Quantity.share(read.value("mites_worst_mason")))
                        : null,
                mason
                        ? Phrase.of(
                                "Take the cocoons out of every nest and wash them in cool water; mites sit outside, not inside"
                                        + " sound cocoons. Look at the residue under a lens. Empty gear: dry heat near {} for"
                                        + " weeks, or bleach (rinse --item gear). Paper liners next year, never reused.",
                                Quantity.celsius(heat))
                        : Phrase.of(
                                "Screen loose cells dry and throw the dust away, sealed; leaf cells are never washed. Empty"
                                        + " gear: dry heat near {} for weeks. New liners next year.",
                                Quantity.celsius(heat)),
                Phrase.of(
                        "A fitted dust mask, outdoors: mites are known to bring on allergies. Heat and bleach only for gear"
                                + " without any bee in it."),
                read.read()));
    }
}
