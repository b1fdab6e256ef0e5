package org.nestyear.core.advice.winter;

import java.util.Optional;
import org.nestyear.core.advice.Finding;
import org.nestyear.core.advice.Level;
import org.nestyear.core.advice.Phrase;
import org.nestyear.core.advice.Quantity;
import org.nestyear.core.source.ReadLog;

/** After enough chill every warm hour counts towards emergence, so opening and rinsing must be short. */
final class HandlingRule implements WinterRule {
    @Override
    public Optional<Finding> find(WinterCheck check) {
        ReadLog read = check.read();
        double from = read.value("handling_brief_days");
        if (check.chillDays() < from) {
            return Optional.empty();
        }
        return Optional.of(new Finding(
                "handle-briefly",
                Level.NOTE,
                Phrase.of("From now on warmth counts towards coming out."),
                Phrase.of("{} of chill", Quantity.days(check.chillDays())),
                Phrase.of("from about {} on", Quantity.days(from)),
                Phrase.of("Open, sort and rinse in a cool room within the hour, and let them dry before they go back."),
                Phrase.of("Wear a dust mask when opening nests: mites and mould make dust."),
                read.read()));
    }
}
