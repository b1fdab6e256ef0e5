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

/** Keep mud wet while females build. */
public final class MudJob implements JobRule {
    @Override
    public Optional<Job> find(Situation s) {
        ReadLog read = s.read();
        Outlook o = s.outlook();
        if (o.cells() < 1) {
            return Optional.empty();
        }
        LocalDate from = s.notBeforeToday(o.firstFemales().early());
        LocalDate to =
                o.lastNesting().late().isBefore(from) ? from : o.lastNesting().late();
        return Optional.of(new Job(
                "mud",
                Phrase.of("Keep a patch of mud wet"),
                from,
                to,
                Phrase.of(
                        "one patch within {} of the house, damp every dry day",
                        Quantity.metres(read.value("mud_distance_m"))),
                Phrase.of(
                        "Each of about {} cells gets a wall of mud; females begin {} after they come out.",
                        Quantity.count(Math.rint(o.cells())),
                        Quantity.days(read.value("prenesting_days"))),
                Phrase.of("Shallow mud only: no open water a child or a bee could drown in."),
                List.of(
                        Phrase.of(
                                "First females out between {} and {}.",
                                o.firstFemales().early(),
                                o.firstFemales().late()),
                        Phrase.of(
                                "Nesting ends between {} and {}.",
                                o.lastNesting().early(),
                                o.lastNesting().late())),
                read.read()));
    }
}
