package org.nestyear.core.advice.rule;

import java.util.Optional;
import org.nestyear.core.advice.Finding;
import org.nestyear.core.advice.FindingRule;
import org.nestyear.core.advice.Situation;
import org.nestyear.core.advice.winter.WinterCheck;
import org.nestyear.core.season.Wintered;

/** Holds a fridge batch, by the day of release, against the published limits of cold storage. */
public final class FridgeFinding implements FindingRule {
    @Override
    public Optional<Finding> find(Situation s) {
        Double chillC = s.batch().chillC();
        Double chillDays = s.batch().chillDays();
        if (s.batch().wintered() != Wintered.FRIDGE || chillC == null || chillDays == null) {
            return Optional.empty();
        }
        double atRelease = chillDays
                + Math.max(0, s.first().date().toEpochDay() - s.today().toEpochDay());
        return WinterCheck.ofSteadyFridge(s.species().parameters(), atRelease, chillC);
    }
}
