package org.nestyear.core.advice.rule;

import java.util.Optional;
import org.nestyear.core.advice.Finding;
import org.nestyear.core.advice.FindingRule;
import org.nestyear.core.advice.Level;
import org.nestyear.core.advice.Phrase;
import org.nestyear.core.advice.Quantity;
import org.nestyear.core.advice.Situation;
import org.nestyear.core.season.Wintered;
import org.nestyear.core.source.ReadLog;

/** Looks whether a fridge batch has had enough cold to come out, or has waited so long that waiting costs females. */
public final class ChillFinding implements FindingRule {
    @Override
    public Optional<Finding> find(Situation s) {
        Double chillDays = s.batch().chillDays();
        if (s.batch().wintered() != Wintered.FRIDGE || chillDays == null) {
            return Optional.empty();
        }
        ReadLog read = s.read();
        double atRelease = chillDays
                + Math.max(0, s.first().date().toEpochDay() - s.today().toEpochDay());
        if (atRelease < read.value("chill_enough_days")) {
            return Optional.of(new Finding(
                    "too-little-cold",
                    Level.ACT,
                    Phrase.of("These bees will have had too little cold; many will not come out, or late and weak."),
                    Phrase.of("{} of cold by the day of release", Quantity.days(atRelease)),
                    Phrase.of("{} or more", Quantity.days(read.value("chill_enough_days"))),
                    Phrase.of(
                            "Do not warm them. If something flowers into summer, keep them cold longer and put them out"
                                    + " for that; otherwise expect few bees this year."),
                    null,
                    read.read()));
        }
        double old = atRelease - read.value("old_stock_days");
        if (old <= 0) {
            return Optional.empty();
        }
        return Optional.of(new Finding(
                "long-in-the-cold",
                Level.WATCH,
                Phrase.of(
                        "Beyond {} in the cold every further day is taken to cost {} of the females that would settle.",
                        Quantity.days(read.value("old_stock_days")),
                        Quantity.share(read.value("old_stock_loss"))),
                Phrase.of("{} by the day of release", Quantity.days(atRelease)),
                Phrase.of("{}", Quantity.days(read.value("old_stock_days"))),
                Phrase.of(
                        "Keep them at {} or colder until then, and do not wait longer than the window.",
                        Quantity.celsius(read.value("fridge_high_c"))),
                null,
                read.read()));
    }
}
