package org.nestyear.core.advice.rule;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.nestyear.core.advice.Job;
import org.nestyear.core.advice.JobRule;
import org.nestyear.core.advice.Phrase;
import org.nestyear.core.advice.Quantity;
import org.nestyear.core.advice.Situation;
import org.nestyear.core.release.ReleasePlan;
import org.nestyear.core.season.SeasonFrame;
import org.nestyear.core.season.Wintered;
import org.nestyear.core.source.ReadLog;

/** Put the cocoons out: the heart of the plan. */
public final class PutOutJob implements JobRule {
    @Override
    public Optional<Job> find(Situation s) {
        ReadLog read = s.read();
        ReleasePlan plan = s.release();
        boolean unopened = s.batch().wintered() == Wintered.UNOPENED;
        LocalDate from = s.notBeforeToday(plan.window().from());
        LocalDate to = plan.window().to().isBefore(from) ? from : plan.window().to();
        return Optional.of(new Job(
                "put-out",
                unopened ? Phrase.of("Set the full nests beside clean ones") : Phrase.of("Put the cocoons out"),
                from,
                to,
                unopened ? nests(s) : cocoons(s),
                reason(s),
                Phrase.of(
                        "Wait for a cool morning or dusk, and never on the eve of a spray nearby. Bees of this kind sting"
                                + " only when squeezed; keep a known allergy in mind."),
                why(s, read),
                read.read()));
    }

    private static Phrase cocoons(Situation s) {
        return Phrase.of(
                "{} females and {} males, in a box with one dark exit, one or two layers deep, close to the"
                        + " nests and out of the sun",
                Quantity.count(s.first().females()),
                Quantity.count(s.first().males()));
    }

    private static Phrase nests(Situation s) {
        return Phrase.of(
                "full nests with about {} females and {} males, in a dark box with one exit, so that no bee builds in them"
                        + " again",
                Quantity.count(s.first().females()),
                Quantity.count(s.first().males()));
    }

    private static Phrase reason(Situation s) {
        if (s.choosesItself()) {
            return Phrase.of(
                    "They are at outdoor warmth and choose their own day: the first may be out on {}, so they must"
                            + " be at the nests before that.",
                    s.outlook().firstMales().early());
        }
        return Phrase.of(
                "Females should then be out from {} to {}, with the middle of bloom about {}. The rule of thumb"
                        + " says {} and {}.",
                s.outlook().firstFemales().middle(),
                s.outlook().mostFemales().middle(),
                s.outlook().targetBloom().middle(),
                s.release().ruleOfThumb().date(),
                Loss.of(s.release().ruleOfThumb().cost()));
    }

    private static List<Phrase> why(Situation s, ReadLog read) {
        ReleasePlan plan = s.release();
        List<Phrase> why = new ArrayList<>();
        why.add(Phrase.of("{} weather years stand behind this.", Quantity.count(s.realYears())));
        if (s.choosesItself()) {
            LocalDate cold = SeasonFrame.planningFrom(s.today()).ofDayOfYear(read.value("cold_start_day"));
            why.add(Phrase.of("Their cold is counted from {}, by convention.", cold));
        } else {
            why.add(Phrase.of(
                    "No date from {} to {} can be told from the best; the window holds those that lose {} or less on"
                            + " average, and {} at least.",
                    plan.notRuledOut().from(),
                    plan.notRuledOut().to(),
                    Quantity.share(read.value("window_cost")),
                    Quantity.days(read.value("window_least_days"))));
            why.add(Phrase.of(
                    "Rule of thumb: {}, {}.",
                    plan.ruleOfThumb().date(),
                    Loss.of(plan.ruleOfThumb().cost())));
            why.add(Phrase.of(
                    "Best fixed calendar date over the past years: {}, {}.",
                    plan.fixedDate().date(),
                    Loss.of(plan.fixedDate().cost())));
        }
        if (!plan.holdBack().isEmpty()) {
            read.row("lot_lost_chance");
            why.addAll(HoldBackWords.of(plan.holdBack()));
        }
        why.add(Phrase.of(
                "Expected: {} surviving daughters ({} to {}) and {} sons.",
                Quantity.count(Math.rint(s.outlook().daughters())),
                Quantity.count(Math.rint(s.outlook().daughtersLow())),
                Quantity.count(Math.rint(s.outlook().daughtersHigh())),
                Quantity.count(Math.rint(s.outlook().sons()))));
        return why;
    }
}
