package org.nestyear.core.advice.rule;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.nestyear.core.advice.Job;
import org.nestyear.core.advice.JobRule;
import org.nestyear.core.advice.Phrase;
import org.nestyear.core.advice.Quantity;
import org.nestyear.core.advice.Situation;
import org.nestyear.core.release.ReleaseWindow;
import org.nestyear.core.source.ReadLog;

/** Ask again as the weather becomes known: the advice rolls. */
public final class AskAgainJob implements JobRule {
    @Override
    public Optional<Job> find(Situation s) {
        if (s.isNow() || s.choosesItself()) {
            return Optional.empty();
        }
        ReadLog read = s.read();
        ReleaseWindow window = s.release().window();
        LocalDate soon = window.from().minusDays(Math.round(read.value("ask_ahead_days")));
        LocalDate next = s.today().plusDays(Math.round(read.value("ask_again_days")));
        LocalDate from = soon.isAfter(next) ? soon : next;
        LocalDate open = s.isOpen() ? s.release().bestDate() : window.from();
        LocalDate to = open.isBefore(from) ? from : open;
        return Optional.of(new Job(
                "ask-again",
                Phrase.of("Ask again with newer weather"),
                from,
                to,
                Phrase.of("every {} from then on", Quantity.days(read.value("ask_again_days"))),
                Phrase.of(
                        "On the weather so far the window is {} to {}; every warm or cold week before it moves it.",
                        window.from(),
                        window.to()),
                null,
                List.of(Phrase.of(
                        "Dates not ruled out today: {} to {}.",
                        s.release().notRuledOut().from(),
                        s.release().notRuledOut().to())),
                read.read()));
    }
}
