package org.nestyear.core.advice.opening;

import java.util.Optional;
import org.nestyear.core.advice.Finding;
import org.nestyear.core.advice.Level;
import org.nestyear.core.advice.Phrase;
import org.nestyear.core.advice.Quantity;
import org.nestyear.core.losses.Cause;
import org.nestyear.core.source.ReadLog;

/** Mould: the nest or the store was wet. */
final class MouldRule implements OpeningRule {
    @Override
    public Optional<Finding> find(OpeningCase opened) {
        if (opened.lost(Cause.MOULD) == 0) {
            return Optional.empty();
        }
        ReadLog read = opened.read();
        return Optional.of(new Finding(
                "mould",
                Level.WATCH,
                Phrase.of("Mould grows where nests are wet: driving rain, plastic that cannot breathe, a damp store."),
                opened.seen(Cause.MOULD),
                null,
                Phrase.of(
                        "Give the house a deeper roof and use tubes that breathe. Dry the cocoons before they go to the cold,"
                                + " in air of {} to {}, as keepers hold it.",
                        Quantity.share(read.value("air_dry_percent") / 100),
                        Quantity.share(read.value("air_damp_percent") / 100)),
                Phrase.of("Mould makes dust: a fitted mask, outdoors, and damp the debris."),
                read.read()));
    }
}
