package org.nestyear.core.advice.winter;

import java.util.Optional;
import org.nestyear.core.advice.Finding;
import org.nestyear.core.advice.Level;
import org.nestyear.core.advice.Phrase;
import org.nestyear.core.advice.Quantity;
import org.nestyear.core.advice.Unit;
import org.nestyear.core.source.ReadLog;
import org.nestyear.core.winter.PreWinter;

/** Warm weeks between adulthood and the cold cost lives in winter (Sgolastra et al. 2011). */
final class PreWinterRule implements WinterRule {
    private static final double PERCENT = 100;
    /** Share of deaths that is pressing; numerical. */
    private static final double MUCH = 0.1;

    @Override
    public Optional<Finding> find(WinterCheck check) {
        Double degreeDays = check.preWinter();
        if (degreeDays == null) {
            return Optional.empty();
        }
        ReadLog read = check.read();
        PreWinter line = PreWinter.of(read);
        double share = line.deathPercent(degreeDays) / PERCENT;
        if (share <= 0) {
            return Optional.empty();
        }
        return Optional.of(new Finding(
                "warm-before-the-cold",
                share > MUCH ? Level.ACT : Level.WATCH,
                Phrase.of("The warm weeks between adulthood and the cold will cost lives this winter."),
                Phrase.of(
                        "{} above {}: about {} more deaths{}",
                        new Quantity(degreeDays, Unit.DEGREE_DAY, 0),
                        Quantity.celsius(line.baseC()),
                        Quantity.share(share),
                        line.isOutside(degreeDays) ? ", outside what was studied" : ""),
                null,
                Phrase.of(
                        "Next autumn cool them two to four weeks after they are adult, once a look inside proves it."),
                null,
                read.read()));
    }
}
