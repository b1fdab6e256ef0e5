package org.nestyear.core.advice.rule;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.nestyear.core.advice.Job;
import org.nestyear.core.advice.JobRule;
import org.nestyear.core.advice.Phrase;
import org.nestyear.core.advice.Quantity;
import org.nestyear.core.advice.Situation;
import org.nestyear.core.release.Portion;
import org.nestyear.core.release.ReleasePlan;
import org.nestyear.core.source.ReadLog;

/** The part held back, or the second release where tunnels run out. */
public final class SecondReleaseJob implements JobRule {
    @Override
    public Optional<Job> find(Situation s) {
        ReleasePlan plan = s.release();
        if (plan.releases().size() < 2) {
            return Optional.empty();
        }
        ReadLog read = s.read();
        Portion second = plan.releases().get(1);
        boolean insurance = plan.splitReason().equals("insurance");
        LocalDate nesting = s.outlook().firstFemales().middle().plusDays(Math.round(read.value("prenesting_days")));
        LocalDate from = s.notBeforeToday(insurance ? nesting : second.date());
        LocalDate days = from.plusDays(Math.round(read.value("window_least_days")) - 1);
        LocalDate to = second.date().isBefore(days) ? days : second.date();
        Phrase reason = insurance
                ? Phrase.of(
                        "If a cold spell, a spray or birds take the first lot, these are left. Put them out when the first"
                                + " are seen nesting. Holding them back {}.",
                        Loss.of(-plan.splitGain()))
                : Phrase.of(
                        "Tunnels run out in {} of the seasons tried; a second lot finds tunnels free again and wins {}.",
                        Quantity.share(plan.shareCapped()),
                        Quantity.share(plan.splitGain()));
        return Optional.of(new Job(
                "second-release",
                insurance ? Phrase.of("Put out the part held back") : Phrase.of("Put out the second lot"),
                from,
                to,
                second.males() == 0
                        ? Phrase.of("{} females, cold until then", Quantity.count(second.females()))
                        : Phrase.of(
                                "{} females and {} males, cold until then",
                                Quantity.count(second.females()),
                                Quantity.count(second.males())),
                reason,
                Phrase.of("Never on the eve of a spray nearby, and in a cool morning or at dusk."),
                List.of(
                        Phrase.of(
                                "Held back: {} of the batch.",
                                Quantity.share((double) (second.females() + second.males())
                                        / s.batch().cocoons())),
                        Phrase.of("A split never beats one good date on average unless tunnels or food run out.")),
                insurance
                        ? List.of(read.row("hold_back"), read.row("second_release_days"), read.row("prenesting_days"))
                        : read.read()));
    }
}
