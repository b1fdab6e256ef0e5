package org.nestyear.core.advice.rule;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.nestyear.core.advice.Job;
import org.nestyear.core.advice.JobRule;
import org.nestyear.core.advice.Phrase;
import org.nestyear.core.advice.Quantity;
import org.nestyear.core.advice.Situation;
import org.nestyear.core.release.ReleaseWindow;
import org.nestyear.core.season.Spray;
import org.nestyear.core.source.ReadLog;

/** A spray announced nearby: wait with the cocoons, or speak with the neighbour where bees fly already. */
public final class SprayJob implements JobRule {
    @Override
    public Optional<Job> find(Situation s) {
        ReadLog read = s.read();
        long wait = Math.round(read.value("spray_wait_days"));
        List<Spray> ahead = s.inputs().sprays().stream()
                .filter(spray -> !spray.date().plusDays(wait).isBefore(s.today()))
                .filter(spray -> !spray.date().isAfter(s.outlook().lastNesting().late()))
                .sorted(Comparator.comparing(Spray::date))
                .toList();
        if (ahead.isEmpty()) {
            return Optional.empty();
        }
        Spray next = ahead.get(0);
        LocalDate over = next.date().plusDays(wait);
        List<Phrase> why = new ArrayList<>();
        for (Spray spray : ahead) {
            why.add(Phrase.of("{}: {}.", spray.date(), spray.what().isEmpty() ? "a spray" : spray.what()));
        }
        why.add(Phrase.of(
                "Bees may fly from {} to {}.",
                s.outlook().firstMales().early(),
                s.outlook().lastNesting().late()));
        why.add(Phrase.of(
                "How long a spray stays harmful stands on its label: from hours to more than a week. {} are taken.",
                Quantity.days((double) wait)));
        return Optional.of(new Job(
                "spray",
                Phrase.of("A spray nearby on {}", next.date()),
                s.notBeforeToday(next.date().minusDays(wait)),
                s.notBeforeToday(over),
                what(s, next, wait),
                Phrase.of(
                        "Speak with whoever sprays: not on open flowers, in the evening when no bee flies, with what stays"
                                + " harmful shortest, in still air. Ask what it is and read its label."),
                Phrase.of(
                        "Never plug, cover or carry away tunnels in use. Stay away until the label lets people in again; the"
                                + " label and the law of the place decide."),
                why,
                read.read()));
    }

    private static Phrase what(Situation s, Spray next, long wait) {
        ReleaseWindow window = s.release().window();
        LocalDate since = next.date().minusDays(wait);
        LocalDate over = next.date().plusDays(wait);
        if (s.choosesItself() || over.isBefore(window.from()) || since.isAfter(window.to())) {
            return Phrase.of("bees may be flying then; nothing is put out or carried off in a hurry");
        }
        return over.isBefore(window.to())
                ? Phrase.of(
                        "put nothing out from {} to {}; the window runs to {}",
                        s.notBeforeToday(since),
                        over,
                        window.to())
                : Phrase.of(
                        "put nothing out from {} to {}, though the window ends on {}: later costs less than poison",
                        s.notBeforeToday(since),
                        over,
                        window.to());
    }
}
