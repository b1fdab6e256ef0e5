package org.nestyear.core.advice.rule;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.nestyear.core.advice.Job;
import org.nestyear.core.advice.JobRule;
import org.nestyear.core.advice.Phrase;
import org.nestyear.core.advice.Quantity;
import org.nestyear.core.advice.Situation;
import org.nestyear.core.release.Outlook;
import org.nestyear.core.source.ReadLog;

/** Count plugged tunnels while the bees build, and leave the nests where they hang. */
public final class CountPlugsJob implements JobRule {
    @Override
    public Optional<Job> find(Situation s) {
        Outlook o = s.outlook();
        if (o.cells() < 1) {
            return Optional.empty();
        }
        ReadLog read = s.read();
        LocalDate from = s.notBeforeToday(o.halfFemales().late().plusDays(Math.round(read.value("prenesting_days"))));
        LocalDate to =
                o.lastNesting().late().isBefore(from) ? from : o.lastNesting().late();
        return Optional.of(new Job(
                "count-plugs",
                Phrase.of("Count plugged tunnels once a week"),
                from,
                to,
                Phrase.of(
                        "about {} of {} tunnels begun by the end",
                        Quantity.count(Math.rint(o.tunnelsUsed())),
                        Quantity.count(s.tunnels())),
                Phrase.of(
                        "No new plug for two weeks means the season is over, most likely about {}. Until the young have spun"
                                + " their cocoons do not knock or move the nests.",
                        o.lastNesting().middle()),
                Phrase.of("Leave the guard on, and do not reach behind it while bees fly."),
                List.of(
                        Phrase.of("Expected: {} cells.", Quantity.count(Math.rint(o.cells()))),
                        Phrase.of(
                                "Nesting ends between {} and {}.",
                                o.lastNesting().early(),
                                o.lastNesting().late())),
                read.read()));
    }
}
