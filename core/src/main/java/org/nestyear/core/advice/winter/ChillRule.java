package org.nestyear.core.advice.winter;

import java.util.Optional;
import org.nestyear.core.advice.Finding;
import org.nestyear.core.advice.Level;
import org.nestyear.core.advice.Phrase;
import org.nestyear.core.advice.Quantity;
import org.nestyear.core.source.ReadLog;

/** Says whether they have had cold enough to come out well (Bosch &amp; Kemp 2004). */
final class ChillRule implements WinterRule {
    @Override
    public Optional<Finding> find(WinterCheck check) {
        ReadLog read = check.read();
        double enough = read.value("chill_enough_days");
        if (check.chillDays() >= enough) {
            return Optional.empty();
        }
        return Optional.of(new Finding(
                "chill-not-yet",
                Level.NOTE,
                Phrase.of("They need more cold before they come out well."),
                Phrase.of("{} of chill so far", Quantity.days(check.chillDays())),
                Phrase.of(
                        "{}; few come out after less than {}",
                        Quantity.days(enough),
                        Quantity.days(read.value("chill_poor_days"))),
                Phrase.of("Leave them cold for {} more.", Quantity.days(Math.ceil(enough - check.chillDays()))),
                null,
                read.read()));
    }
}
