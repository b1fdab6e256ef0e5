package org.nestyear.core.advice.winter;

import java.util.Optional;
import org.nestyear.core.advice.Finding;
import org.nestyear.core.advice.Level;
import org.nestyear.core.advice.Phrase;
import org.nestyear.core.advice.Quantity;
import org.nestyear.core.source.ReadLog;

/** Cocoons outdoors or in a shed that warm up late in winter may leave before the bloom. */
final class MildSpellRule implements WinterRule {
    @Override
    public Optional<Finding> find(WinterCheck check) {
        ReadLog read = check.read();
        double limit = read.value("chill_limit_c");
        if (check.inFridge() || check.chillDays() < read.value("handling_brief_days") || check.nowC() < limit) {
            return Optional.empty();
        }
        return Optional.of(new Finding(
                "mild-late-winter",
                Level.WATCH,
                Phrase.of("They have had their cold, and this warmth brings them towards coming out."),
                Phrase.of("{} on the last day", Quantity.celsius(check.nowC()).withDecimals(1)),
                Phrase.of("about {}", Quantity.celsius(limit)),
                Phrase.of(
                        "Shade them from the sun; loose cocoons may go to a fridge until bloom is near. Full nests stay"
                                + " where they are."),
                null,
                read.read()));
    }
}
