package org.nestyear.core.advice.rule;

import java.util.Optional;
import org.nestyear.core.advice.Finding;
import org.nestyear.core.advice.FindingRule;
import org.nestyear.core.advice.Level;
import org.nestyear.core.advice.Phrase;
import org.nestyear.core.advice.Quantity;
import org.nestyear.core.advice.Situation;
import org.nestyear.core.source.Parameter;
import org.nestyear.core.source.ReadLog;

/** Minds bees that come from elsewhere. */
public final class OriginFinding implements FindingRule {
    @Override
    public Optional<Finding> find(Situation s) {
        if (s.batch().origin().equalsIgnoreCase("local")) {
            return Optional.empty();
        }
        ReadLog read = s.read();
        Parameter far = read.row("far_stock_survival");
        Parameter local = read.row("local_stock_survival");
        return Optional.of(new Finding(
                "from-elsewhere",
                Level.WATCH,
                Phrase.of("These bees come from elsewhere; their dates may be off here, and their young winter badly."),
                Phrase.of("origin: {}", s.batch().origin()),
                Phrase.of(
                        "young of far-off stock lived through winter at {} to {}, of local stock at {}",
                        Quantity.share(far.low()),
                        Quantity.share(far.high()),
                        Quantity.share(local.value())),
                Phrase.of("Look for local stock for next year, and keep these apart for a season."),
                Phrase.of("Bees moved over a border may need a permit; ask your local authority."),
                read.read()));
    }
}
