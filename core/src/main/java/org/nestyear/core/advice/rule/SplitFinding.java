package org.nestyear.core.advice.rule;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.nestyear.core.advice.Finding;
import org.nestyear.core.advice.FindingRule;
import org.nestyear.core.advice.Level;
import org.nestyear.core.advice.Phrase;
import org.nestyear.core.advice.Quantity;
import org.nestyear.core.advice.Situation;
import org.nestyear.core.release.BestPair;
import org.nestyear.core.source.Parameter;
import org.nestyear.core.source.ReadLog;

/** Says why the bees go out in one lot or in two. */
public final class SplitFinding implements FindingRule {
    @Override
    public Optional<Finding> find(Situation s) {
        ReadLog read = s.read();
        List<Parameter> insurance =
                List.of(read.row("hold_back"), read.row("second_release_days"), read.row("insurance_cost_most"));
        Quantity held = Quantity.share(read.value("hold_back"));
        return switch (s.release().splitReason()) {
            case "insurance" ->
                note(
                        "two-lots",
                        Phrase.of(
                                "Two lots, as insurance against what no weather record shows, such as a spray or birds: a"
                                        + " split never beats one good date on average while tunnels and food suffice."),
                        Phrase.of(
                                "{}holding {} back costs {} on average; in the worst spring in ten it {} {}",
                                pairs(s.release().bestPair()),
                                held,
                                Quantity.share(Math.max(0, -s.release().splitGain())),
                                s.release().splitGainInBadYears() < 0 ? "loses" : "saves",
                                Quantity.share(Math.abs(s.release().splitGainInBadYears()))),
                        Phrase.of("If you would rather have all in one lot, put all out inside the window."),
                        insurance);
            case "tunnels-run-out" ->
                note(
                        "two-lots",
                        Phrase.of("Two lots, because tunnels run out."),
                        Phrase.of(
                                "the split wins {}", Quantity.share(s.release().splitGain())),
                        Phrase.of("With more tunnels one lot would do."),
                        List.of(read.row("split_least_gain")));
            case "small-stock" ->
                note(
                        "one-lot",
                        Phrase.of(
                                "One lot, because the stock is small: few bees find each other best when all fly at once."),
                        Phrase.of("{} cocoons", Quantity.count(s.batch().cocoons())),
                        Phrase.of("Keep none back."),
                        List.of(read.row("small_cocoons"), read.row("small_females")));
            case "insurance-too-dear" ->
                note(
                        "one-lot",
                        Phrase.of("One lot: a part held back would lose more than the insurance is worth."),
                        Phrase.of(
                                "{}holding {} back would cost {}, more than {}",
                                pairs(s.release().bestPair()),
                                held,
                                Quantity.share(Math.max(0, -s.release().splitGain())),
                                Quantity.share(read.value("insurance_cost_most"))),
                        Phrase.of("Put all out at once."),
                        insurance);
            default -> Optional.empty();
        };
    }

    /** How the best of all pairs compares with one date. */
    private static Object pairs(@Nullable BestPair best) {
        if (best == null) {
            return "";
        }
        Quantity tried = Quantity.count(best.tried());
        return best.gain() < 0
                ? Phrase.of("of {} ways to split the bees over two dates none beats one date; ", tried)
                : Phrase.of(
                        "of {} ways to split the bees over two dates the best wins {} at most; ",
                        tried,
                        Quantity.share(best.gain()));
    }

    private static Optional<Finding> note(
            String id, Phrase what, Phrase observed, Phrase action, List<Parameter> basis) {
        return Optional.of(new Finding(id, Level.NOTE, what, observed, null, action, null, basis));
    }
}
