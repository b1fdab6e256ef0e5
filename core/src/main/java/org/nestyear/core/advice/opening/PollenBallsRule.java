package org.nestyear.core.advice.opening;

import java.util.Optional;
import org.nestyear.core.advice.Finding;
import org.nestyear.core.advice.Level;
import org.nestyear.core.advice.Phrase;
import org.nestyear.core.advice.Quantity;
import org.nestyear.core.losses.Cause;
import org.nestyear.core.losses.CellShare;
import org.nestyear.core.source.ReadLog;

/** Food without a grub: the egg failed, often in heat or after a jolt. */
final class PollenBallsRule implements OpeningRule {
    @Override
    public Optional<Finding> find(OpeningCase opened) {
        if (opened.lost(Cause.POLLEN_BALLS) == 0) {
            return Optional.empty();
        }
        ReadLog read = opened.read();
        CellShare share = opened.losses().share(Cause.POLLEN_BALLS);
        double heat = read.value("pollen_balls_heat_c");
        boolean mason = opened.isMason();
        Phrase limit = null;
        Level level = Level.NOTE;
        if (!mason) {
            double high = read.row("pollen_balls_leafcutter").high();
            limit = Phrase.of(
                    "{} to {} in nests of the USA",
                    Quantity.share(read.row("pollen_balls_leafcutter").low()),
                    Quantity.share(high));
            level = share.against(high) == CellShare.Standing.ABOVE ? Level.ACT : Level.WATCH;
        }
        return Optional.of(new Finding(
                "pollen-balls",
                level,
                Phrase.of("Pollen balls: the egg failed, or the grub died small, and the food is left."),
                OpeningCase.seen(share),
                limit,
                mason
                        ? Phrase.of(
                                "Leave nests still until the young have spun, for a jolt drops the egg; shade the face from the"
                                        + " afternoon sun. In leafcutters there were more after days above {}; for mason bees"
                                        + " it is not known.",
                                Quantity.celsius(heat))
                        : Phrase.of(
                                "There were more where more days rose above {}: give the house shade after mid-morning, air"
                                        + " behind it, and a face to the north or east where summers are hot.",
                                Quantity.celsius(heat)),
                Phrase.of("Never move a house while bees nest in it: most of them are lost."),
                read.read()));
    }
}
