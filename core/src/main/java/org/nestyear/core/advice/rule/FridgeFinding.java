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

/** Holds a fridge batch against the published limits of cold storage; other stock is not judged by them. */
public final class FridgeFinding implements FindingRule {
    @Override
    public Optional<Finding> find(Situation s) {
        Double chillC = s.batch().chillC();
        Double chillDays = s.batch().chillDays();
        if (s.batch().wintered() != Wintered.FRIDGE || chillC == null || chillDays == null) {
            return Optional.empty();
        }
        ReadLog read = s.read();
        double atRelease = chillDays
                + Math.max(0, s.first().date().toEpochDay() - s.today().toEpochDay());
        Phrase observed = Phrase.of(
                "{}, {} by the day of release", Quantity.celsius(chillC).withDecimals(1), Quantity.days(atRelease));
        if (chillC >= read.value("chill_limit_c")) {
            return finding(
                    read,
                    Level.ACT,
                    "fridge-far-too-warm",
                    Phrase.of("The store is too warm for wintering these bees, even for a short time."),
                    observed,
                    Phrase.of("below {}", Quantity.celsius(read.value("chill_limit_c"))),
                    Phrase.of("Move them to the coldest part of a fridge today, and check with a thermometer."));
        }
        if (chillC > read.value("fridge_warm_c")) {
            return finding(
                    read,
                    Level.ACT,
                    "fridge-too-warm",
                    Phrase.of("Warmer than any store in which these bees wintered well, however short."),
                    observed,
                    Phrase.of(
                            "{} at most, and for {} at most",
                            Quantity.celsius(read.value("fridge_warm_c")),
                            Quantity.days(read.value("fridge_warm_days"))),
                    Phrase.of("Turn the fridge down to {} now.", Quantity.celsius(read.value("fridge_high_c"))));
        }
        if (chillC > read.value("fridge_high_c") && atRelease > read.value("fridge_warm_days")) {
            return finding(
                    read,
                    Level.ACT,
                    "fridge-too-warm-too-long",
                    Phrase.of("Cocoons kept this warm for this long burn their fat and die early."),
                    observed,
                    Phrase.of(
                            "{} or colder beyond {}",
                            Quantity.celsius(read.value("fridge_high_c")),
                            Quantity.days(read.value("fridge_warm_days"))),
                    Phrase.of("Turn the fridge down to {} now.", Quantity.celsius(read.value("fridge_high_c"))));
        }
        if (chillC < read.value("fridge_low_c") - 1) {
            return finding(
                    read,
                    Level.WATCH,
                    "fridge-colder-than-tested",
                    Phrase.of("Colder than the range that was tested."),
                    observed,
                    Phrase.of(
                            "{} to {}",
                            Quantity.celsius(read.value("fridge_low_c")),
                            Quantity.celsius(read.value("fridge_high_c"))),
                    Phrase.of("Keep them just above freezing; never thaw and freeze again."));
        }
        if (atRelease > read.value("fridge_long_days")) {
            return finding(
                    read,
                    Level.ACT,
                    "fridge-too-long",
                    Phrase.of("Longer in the cold than was ever tested with success."),
                    observed,
                    Phrase.of("{} at most", Quantity.days(read.value("fridge_long_days"))),
                    Phrase.of("Put them out as soon as bees can fly."));
        }
        return Optional.empty();
    }

    private static Optional<Finding> finding(
            ReadLog read, Level level, String id, Phrase what, Phrase observed, Phrase limit, Phrase action) {
        return Optional.of(new Finding(id, level, what, observed, limit, action, null, read.read()));
    }
}
