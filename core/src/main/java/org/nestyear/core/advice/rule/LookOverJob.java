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

/** Look the cocoons over before they go out. */
public final class LookOverJob implements JobRule {
    @Override
    public Optional<Job> find(Situation s) {
        if (s.batch().wintered() == Wintered.UNOPENED) {
            return Optional.empty();
        }
        ReadLog read = s.read();
        double shut =
                s.batch().females() * read.value("never_out_f") + s.batch().males() * read.value("never_out_m");
        boolean small = s.batch().cocoons() < read.value("small_stock_check");
        LocalDate to = s.notBeforeToday(s.release().window().from().minusDays(1));
        return Optional.of(new Job(
                "look-over",
                Phrase.of("Look the cocoons over"),
                s.today(),
                to,
                small
                        ? Phrase.of(
                                "all {} cocoons, by eye and against the light; open none",
                                Quantity.count(s.batch().cocoons()))
                        : Phrase.of(
                                "all {} cocoons by eye; open {} at most",
                                Quantity.count(s.batch().cocoons()),
                                Quantity.count(Math.floor(s.batch().cocoons() * read.value("open_share_most")))),
                Phrase.of(
                        "About {} of them will stay shut even in a good year; set aside any that are holed, light or"
                                + " mouldy, in a closed box of fine mesh, not the bin.",
                        Quantity.count(Math.rint(shut))),
                Phrase.of(
                        "Keep it short and cool, so they do not warm up. Wear a dust mask if you see mites or chalky dust."),
                List.of(
                        Phrase.of(
                                "Usually {} of females and {} of males never come out.",
                                Quantity.share(read.value("never_out_f")),
                                Quantity.share(read.value("never_out_m"))),
                        Phrase.of(
                                "The batch holds {} cocoons.",
                                Quantity.count(s.batch().cocoons()))),
                read.read()));
    }
}
