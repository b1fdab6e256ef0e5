package org.nestyear.app.cli;

import java.util.ArrayList;
import java.util.List;
import org.nestyear.app.service.TrendAnswer;
import org.nestyear.app.service.Wording;
import org.nestyear.core.count.Limits;
import org.nestyear.core.outlook.GrowthFit;

/** A trend in words. */
final class TrendText {
    static final List<String> METHODS =
            List.of("Growth and chance: Dennis, Munholland & Scott 1991, Ecol. Monogr. 61:115");
    /** Transitions below which the interval of the growth is wider than most messages. */
    private static final int MANY_TRANSITIONS = 10;

    private TrendText() {}

    /** The lines of the answer. */
    static String of(TrendAnswer answer) {
        List<String> lines = new ArrayList<>();
        GrowthFit fit = answer.fit();
        String level = IntervalText.percent(answer.question().level());
        Limits mu = answer.mu();
        lines.add("From " + answer.firstYear() + " to " + answer.lastYear() + " (" + (fit.transitions() + 1)
                + " counts) the stock " + change(fit.mu()) + " a year; with " + level
                + " % confidence each year brought between " + factor(mu.low()) + " and " + factor(mu.high())
                + " times the one before, in the long run. "
                + (mu.contains(0)
                        ? "It may as well not have changed."
                        : "So it " + (fit.mu() > 0 ? "grew" : "shrank") + " by more than chance."));
        boolean up = answer.target() > fit.last();
        lines.add("The chance that it " + (up ? "grows" : "falls") + " from " + count(fit.last()) + " to "
                + count(answer.target()) + " at least once within "
                + Measures.trimmed(answer.question().withinYears(), 1)
                + " years is " + Wording.share(answer.reach(), 0) + "; the counts leave open anything from "
                + Wording.share(answer.reachRange().low(), 0) + " to "
                + Wording.share(answer.reachRange().high(), 0) + ".");
        lines.add("In numbers: mu " + Wording.number(fit.mu(), 4) + " (" + Wording.number(mu.low(), 4) + " to "
                + Wording.number(mu.high(), 4) + "), sigma² " + Wording.number(fit.sigma2(), 4) + " ("
                + Wording.number(answer.sigma2().low(), 4) + " to "
                + Wording.number(answer.sigma2().high(), 4)
                + "), per year, in natural logarithms.");
        lines.addAll(Grounds.lines(
                "it is your own counts and nothing else"
                        + (fit.transitions() < MANY_TRANSITIONS
                                ? "; with " + fit.transitions() + " changes from year to year little is certain."
                                : ".")
                        + " It takes for granted that the years to come are like those counted, that tunnels and flowers set"
                        + " no limit, and that bought, given or wild bees are not in the counts.",
                METHODS,
                List.of()));
        return String.join("\n", lines) + "\n";
    }

    private static String change(double mu) {
        double percent = Math.expm1(Math.abs(mu)) * 100;
        double fall = -Math.expm1(-Math.abs(mu)) * 100;
        return mu >= 0 ? "grew by " + Wording.number(percent, 1) + " %" : "shrank by " + Wording.number(fall, 1) + " %";
    }

    private static String factor(double mu) {
        return Wording.number(Math.exp(mu), 2);
    }

    private static String count(double number) {
        return Measures.trimmed(number, 1);
    }
}
