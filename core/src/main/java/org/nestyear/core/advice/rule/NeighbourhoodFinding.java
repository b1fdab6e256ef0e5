package org.nestyear.core.advice.rule;

import java.util.List;
import java.util.Optional;
import org.nestyear.core.advice.Finding;
import org.nestyear.core.advice.FindingRule;
import org.nestyear.core.advice.Level;
import org.nestyear.core.advice.Phrase;
import org.nestyear.core.advice.Quantity;
import org.nestyear.core.advice.Situation;
import org.nestyear.core.release.Sensitivity;
import org.nestyear.core.source.ReadLog;

/** Shows how far the date moves with a poorer or a richer neighbourhood, and with the way bees settle. */
public final class NeighbourhoodFinding implements FindingRule {
    @Override
    public Optional<Finding> find(Situation s) {
        ReadLog read = s.read();
        return Optional.of(new Finding(
                "how-far-it-moves",
                Level.NOTE,
                Phrase.of(
                        "With half the other bloom the best date is {}; with half as much again {}.",
                        moved(s, "poorer-neighbourhood"),
                        moved(s, "richer-neighbourhood")),
                Phrase.of(
                        "if settling does not depend on bloom {}; if it hangs on bloom {}",
                        moved(s, "food-blind-settling"),
                        moved(s, "food-bound-settling")),
                null,
                Phrase.of("If these are far apart, look at what is in flower before you choose inside the window."),
                null,
                List.of(read.row("settling_food_weight"), read.row("community_level"))));
    }

    private static Phrase moved(Situation s, String id) {
        int days = s.release().sensitivities().stream()
                .filter(x -> x.id().equals(id))
                .mapToInt(Sensitivity::days)
                .findFirst()
                .orElse(0);
        if (days == 0) {
            return Phrase.of("the same");
        }
        return Phrase.of("{} {}", Quantity.days(Math.abs(days)), days > 0 ? "later" : "earlier");
    }
}
