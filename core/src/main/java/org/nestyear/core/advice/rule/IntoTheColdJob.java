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

/** The cold begins when even the last are adult, and two weeks have passed, and a look has proved it. */
public final class IntoTheColdJob implements JobRule {
    @Override
    public Optional<Job> find(Situation s) {
        BroodOutlook brood = s.brood();
        LocalDate adult = brood == null ? null : brood.adultLate();
        if (brood == null || adult == null || s.outlook().cells() < 1) {
            return Optional.empty();
        }
        ReadLog read = s.read();
        s.brood(read);
        double wait = read.value("proof_wait_days");
        LocalDate from = s.notBeforeToday(adult.plusDays(Math.round(wait)));
        return Optional.of(new Job(
                "into-the-cold",
                Phrase.of("Let the cold begin, once a look has proved them adult"),
                from,
                from.plusDays(Math.round(wait)),
                Phrase.of(
                        "{} to {} in a fridge, or a cold shed out of sun and rain, safe from mice and with air holes",
                        Quantity.celsius(read.value("fridge_low_c")),
                        Quantity.celsius(read.value("fridge_high_c"))),
                Phrase.of(
                        "Even the last should be adult by {}, and two weeks more are for safety. Warm weeks after that spend"
                                + " the fat of those that were adult first.",
                        adult),
                Phrase.of("If the look shows pale bees, do not chill: wait and look again."),
                List.of(
                        Phrase.of(
                                "Last eggs about {}; {} summers were run.",
                                brood.lastEgg(),
                                Quantity.count(brood.summers())),
                        Phrase.of("Wait of {} after the last are adult.", Quantity.days(wait))),
                read.read()));
    }
}
