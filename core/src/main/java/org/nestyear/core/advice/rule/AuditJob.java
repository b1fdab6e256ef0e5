package org.nestyear.core.advice.rule;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.nestyear.core.advice.Job;
import org.nestyear.core.advice.JobRule;
import org.nestyear.core.advice.Phrase;
import org.nestyear.core.advice.Quantity;
import org.nestyear.core.advice.Situation;
import org.nestyear.core.season.Wintered;
import org.nestyear.core.source.ReadLog;

/** Stop and count what did not come out: the winter's real score. */
public final class AuditJob implements JobRule {
    @Override
    public Optional<Job> find(Situation s) {
        ReadLog read = s.read();
        LocalDate last =
                s.release().releases().get(s.release().releases().size() - 1).date();
        LocalDate afterRelease = last.plusDays(Math.round(read.value("audit_days")));
        LocalDate afterBees =
                s.outlook().mostFemales().late().plusDays(Math.round(read.value("audit_after_last_days")));
        // Never while females may still be inside: early cocoons can wait longer than the trade's three weeks.
        LocalDate mostOut =
                s.outlook().mostFemales().middle().plusDays(Math.round(read.value("audit_after_last_days")));
        boolean byBees = s.choosesItself() || afterRelease.isBefore(mostOut);
        LocalDate from = s.notBeforeToday(byBees ? mostOut : afterRelease);
        LocalDate later = from.plusDays(Math.round(read.value("audit_after_last_days")));
        LocalDate to = afterBees.isBefore(later) ? later : afterBees;
        double shut =
                s.batch().females() * read.value("never_out_f") + s.batch().males() * read.value("never_out_m");
        return Optional.of(new Job(
                "count-unopened",
                s.batch().wintered() == Wintered.UNOPENED
                        ? Phrase.of("Take the old nests away and count what is still shut")
                        : Phrase.of("Take the release box in and count what is still shut"),
                from,
                to,
                Phrase.of(
                        "about {} of {} is usual",
                        Quantity.count(Math.rint(shut)),
                        Quantity.count(s.batch().cocoons())),
                Phrase.of(
                        "What stayed shut is the true score of the winter; write it down. Left out, old cocoons breed pests."),
                Phrase.of("Open doubtful cocoons outdoors, with a dust mask."),
                List.of(Phrase.of(
                        "Common practice: {} after release or {} after the last bee, whichever is later.",
                        Quantity.days(read.value("audit_days")),
                        Quantity.days(read.value("audit_after_last_days")))),
                read.read()));
    }
}
