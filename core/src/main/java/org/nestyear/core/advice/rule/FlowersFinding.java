package org.nestyear.core.advice.rule;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.nestyear.core.advice.Finding;
import org.nestyear.core.advice.FindingRule;
import org.nestyear.core.advice.Level;
import org.nestyear.core.advice.Phrase;
import org.nestyear.core.advice.Quantity;
import org.nestyear.core.advice.Situation;
import org.nestyear.core.forage.Band;
import org.nestyear.core.forage.Forage;
import org.nestyear.core.forage.ForageGap;
import org.nestyear.core.forage.ForageWeek;

/** Says whether the told flowers can feed the cells, in which weeks they may not, and what would bloom then. */
public final class FlowersFinding implements FindingRule {
    /** As many plants as a sentence holds; numerical. */
    private static final int NAMED = 3;

    @Override
    public Optional<Finding> find(Situation s) {
        Forage forage = s.forage();
        if (forage == null || forage.weeks().isEmpty()) {
            return Optional.empty();
        }
        if (!forage.isTold()) {
            return Optional.of(untold());
        }
        return Optional.of(forage.gaps().stream()
                .max(Comparator.comparingDouble(FlowersFinding::lacking))
                .map(gap -> shortOfFlowers(forage, gap))
                .orElseGet(() -> enough(forage)));
    }

    private static double lacking(ForageGap gap) {
        return gap.weeks().stream().mapToDouble(ForageWeek::lacking).sum();
    }

    private static Finding untold() {
        return new Finding(
                "flowers-untold",
                Level.NOTE,
                Phrase.of(
                        "You did not say how large your plants are, so their flowers are not held against the cells."),
                null,
                null,
                Phrase.of("Add cover_m2, the area of the crowns or the bed, to each [[plant]]."),
                null,
                List.of());
    }

    private static Finding shortOfFlowers(Forage forage, ForageGap gap) {
        return new Finding(
                "flowers-short",
                Level.WATCH,
                Phrase.of(
                        gap.isSure()
                                ? "From {} to {} the flowers you told cannot feed all cells that the weather lets them build."
                                : "From {} to {} the flowers you told may not feed all cells that the weather lets them build.",
                        gap.from(),
                        gap.to()),
                Phrase.of("food for {}", cells(gap.supply())),
                Phrase.of("{} cells that the bees could build then", Quantity.count(gap.cells())),
                action(forage, gap),
                null,
                forage.basis());
    }

    private static Phrase action(Forage forage, ForageGap gap) {
        List<String> names = gap.suggestions().stream()
                .limit(NAMED)
                .map(suggestion -> suggestion.plant().name())
                .toList();
        if (names.isEmpty()) {
            return Phrase.of(
                    forage.region() == null
                            ? "Look what else is in flower then within reach and add it; with region under [site] plants"
                                    + " can be named."
                            : "Look what else is in flower then within reach and add it; the command flowers tells more.");
        }
        return Phrase.of(
                "In bloom then and good for these bees: {}. The command flowers tells how much of each.",
                String.join(", ", names));
    }

    private static Finding enough(Forage forage) {
        ForageWeek tightest = forage.weeks().stream()
                .min(Comparator.comparingDouble(week -> week.ratio().middle()))
                .orElseThrow();
        return new Finding(
                "flowers-enough",
                Level.NOTE,
                Phrase.of("The flowers you told can probably feed all cells in every week."),
                Phrase.of("in the tightest week, from {}, food for {}", tightest.from(), cells(tightest.supply())),
                Phrase.of("{} cells that the bees could build", Quantity.count(tightest.cells())),
                Phrase.of("Keep them unmown and unsprayed while the bees nest."),
                null,
                forage.basis());
    }

    private static Phrase cells(Band band) {
        return Phrase.of(
                "{} cells ({} to {})",
                Quantity.count(band.middle()),
                Quantity.count(band.low()),
                Quantity.count(band.high()));
    }
}
