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

/** Look for the first males and females on the days they are due. */
public final class WatchJob implements JobRule {
    @Override
    public Optional<Job> find(Situation s) {
        Outlook o = s.outlook();
        ReadLog read = s.read();
        LocalDate from = s.notBeforeToday(o.firstMales().early());
        LocalDate to =
                o.firstFemales().late().isBefore(from) ? from : o.firstFemales().late();
        double back = read.value("return_cold_hours");
        return Optional.of(new Job(
                "watch",
                Phrase.of("Look for the first bees"),
                from,
                to,
                due(s),
                meaning(s, back),
                null,
                List.of(
                        Phrase.of(
                                "Half the males out: {} to {}.",
                                o.halfMales().early(),
                                o.halfMales().late()),
                        Phrase.of(
                                "Half the females out: {} to {}.",
                                o.halfFemales().early(),
                                o.halfFemales().late()),
                        Phrase.of(
                                "Nine females in ten out: {} to {}.",
                                o.mostFemales().early(),
                                o.mostFemales().late())),
                read.read()));
    }

    private static Phrase due(Situation s) {
        Outlook o = s.outlook();
        Phrase females = Phrase.of(
                "females from {}, half out about {}",
                o.firstFemales().middle(),
                o.halfFemales().middle());
        return s.batch().males() == 0
                ? females
                : Phrase.of(
                        "males from {}, half of them out about {}; {}",
                        o.firstMales().middle(),
                        o.halfMales().middle(),
                        females);
    }

    private static Phrase meaning(Situation s, double backHours) {
        return s.choosesItself()
                ? Phrase.of("Males first and no females for some days is normal.")
                : Phrase.of(
                        "Males first and no females for some days is normal. If it turns cold within {} of putting"
                                + " them out, cocoons not yet chewed may go back to the cold once.",
                        Quantity.hours(backHours).withDecimals(0));
    }
}
