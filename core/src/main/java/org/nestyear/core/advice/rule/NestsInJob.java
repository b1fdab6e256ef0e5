package org.nestyear.core.advice.rule;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.nestyear.core.advice.Job;
import org.nestyear.core.advice.JobRule;
import org.nestyear.core.advice.Phrase;
import org.nestyear.core.advice.Quantity;
import org.nestyear.core.advice.Situation;
import org.nestyear.core.brood.BroodOutlook;
import org.nestyear.core.source.ReadLog;

/** Take the finished nests in once the young have spun, before wasps build up; never sooner, for jarring drops larvae. */
public final class NestsInJob implements JobRule {
    @Override
    public Optional<Job> find(Situation s) {
        BroodOutlook brood = s.brood();
        LocalDate spun = brood == null ? null : brood.spunLate();
        if (brood == null || spun == null || s.outlook().cells() < 1) {
            return Optional.empty();
        }
        ReadLog read = s.read();
        s.brood(read);
        LocalDate from = s.notBeforeToday(spun);
        return Optional.of(new Job(
                "nests-in",
                Phrase.of("Take the full nests in, gently"),
                from,
                from.plusDays(Math.round(read.value("move_in_days"))),
                Phrase.of(
                        "about {} tunnels, level or plug up, into mesh too fine for wasps, in shade at summer warmth outdoors",
                        Quantity.count(Math.rint(s.outlook().tunnelsUsed()))),
                Phrase.of(
                        "The last cells should be spun by {}; before that a knock drops eggs and larvae off their food, and"
                                + " long after it small wasps find the nests. No cellar, attic, car or plastic bag.",
                        spun),
                Phrase.of(
                        "Lift with the house steady and the ladder sound; a few bees may still be about, so move slowly."),
                List.of(
                        Phrase.of("Last eggs about {}.", brood.lastEgg()),
                        Phrase.of(
                                "Spun in {} summers by two sets of stage times; nineteen cases in twenty by {}.",
                                Quantity.count(brood.summers()),
                                spun)),
                read.read()));
    }
}
