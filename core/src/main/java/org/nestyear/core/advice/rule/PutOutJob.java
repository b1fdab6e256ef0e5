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
import org.nestyear.core.season.Wintered;
import org.nestyear.core.source.ReadLog;

/** Put the cocoons out: the heart of the plan. */
public final class PutOutJob implements JobRule {
    @Override
    public Optional<Job> find(Situation s) {
        ReadLog read = s.read();
        ReleasePlan plan = s.release();
        Portion first = s.first();
        boolean itself = s.choosesItself();
        Phrase reason = itself
                ? Phrase.of(
                        "They are at outdoor warmth and choose their own day: the first may be out on {}, so they must"
                                + " be at the nests before that.",
                        s.outlook().firstMales().early())
                : Phrase.of(
                        "Females should then be out from {} to {}, with the middle of bloom about {}. The rule of thumb"
                                + " says {} and loses {} on average.",
                        s.outlook().firstFemales().middle(),
                        s.outlook().mostFemales().middle(),
                        s.outlook().targetBloom().middle(),
                        plan.ruleOfThumb().date(),
                        Quantity.share(plan.ruleOfThumb().cost()));
        LocalDate from = s.notBeforeToday(plan.window().from());
        LocalDate to = plan.window().to().isBefore(from) ? from : plan.window().to();
        return Optional.of(new Job(
                "put-out",
                itself && s.batch().wintered() == Wintered.UNOPENED
                        ? Phrase.of("Set the full nests beside clean ones")
                        : Phrase.of("Put the cocoons out"),
                from,
                to,
                Phrase.of(
                        "{} females and {} males, in a box with one dark exit, one or two layers deep, close to the"
                                + " nests and out of the sun",
                        Quantity.count(first.females()),
                        Quantity.count(first.males())),
                reason,
                Phrase.of(
                        "Wait for a cool morning or dusk, and never on the eve of a spray nearby. Bees of this kind sting"
                                + " only when squeezed; keep a known allergy in mind."),
                List.of(
                        Phrase.of("{} weather years stand behind this.", Quantity.count(s.realYears())),
                        Phrase.of(
                                "They cannot rule out any date from {} to {}; the window holds those that lose {} or less on average.",
                                plan.notRuledOut().from(),
                                plan.notRuledOut().to(),
                                Quantity.share(read.value("window_cost"))),
                        Phrase.of(
                                "Rule of thumb: {}, loses {}.",
                                plan.ruleOfThumb().date(),
                                Quantity.share(plan.ruleOfThumb().cost())),
                        Phrase.of(
                                "Best fixed calendar date over the past years: {}, loses {}.",
                                plan.fixedDate().date(),
                                Quantity.share(plan.fixedDate().cost())),
                        Phrase.of(
                                "Expected: {} surviving daughters ({} to {}) and {} sons.",
                                Quantity.count(Math.rint(s.outlook().daughters())),
                                Quantity.count(Math.rint(s.outlook().daughtersLow())),
                                Quantity.count(Math.rint(s.outlook().daughtersHigh())),
                                Quantity.count(Math.rint(s.outlook().sons())))),
                read.read()));
    }
}
