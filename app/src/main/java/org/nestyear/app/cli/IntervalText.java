package org.nestyear.app.cli;

import java.util.ArrayList;
import java.util.List;
import org.nestyear.app.service.IntervalAnswer;
import org.nestyear.app.service.Wording;
import org.nestyear.core.count.Limits;
import org.nestyear.core.count.Tally;

/** The intervals of a share in words. */
final class IntervalText {
    private static final double SMALL_PERCENT = 0.1;
    private static final int MOST_DECIMALS = 9;

    private IntervalText() {}

    /** The lines of the answer. */
    static String of(IntervalAnswer answer) {
        List<String> lines = new ArrayList<>();
        String level = percent(answer.question().level());
        lines.add(words(answer.total()) + ". With " + level + " % confidence the true share lies between "
                + range(answer.wilson()) + " (by the exact method " + range(answer.clopperPearson()) + ").");
        if (answer.noneFoundUpper().isPresent()) {
            lines.add("None found does not mean none there: with " + level + " % confidence fewer than "
                    + tenths(answer.noneFoundUpper().getAsDouble()) + " % are affected.");
        }
        nests(lines, answer);
        against(lines, answer, level);
        lines.addAll(Grounds.lines(
                "the counts are yours, the rest is arithmetic. It holds when those looked at were taken at random, not"
                        + " picked because they looked ill.",
                methods(answer),
                List.of()));
        return String.join("\n", lines) + "\n";
    }

    /** The published methods used for this answer. */
    static List<String> methods(IntervalAnswer answer) {
        List<String> methods = new ArrayList<>();
        methods.add(
                "Interval: Wilson 1927, J. Am. Stat. Assoc. 22:209; exact: Clopper & Pearson 1934, Biometrika 26:404");
        if (answer.difference() != null) {
            methods.add("Difference: Newcombe 1998, Stat. Med. 17:873, method 10");
        }
        if (answer.clusters() != null) {
            methods.add("Nests: Rao & Scott 1992, Biometrics 48:577; for few nests Korn & Graubard 1998, Survey"
                    + " Methodology 24:193 (both from memory)");
        }
        return methods;
    }

    private static void nests(List<String> lines, IntervalAnswer answer) {
        IntervalAnswer.Clusters clusters = answer.clusters();
        if (clusters == null) {
            return;
        }
        String all = Wording.number(answer.total().of(), 0);
        if (clusters.designEffect().isPresent()) {
            double effect = clusters.designEffect().getAsDouble();
            lines.add("Cells of a nest share a mother: by how much the " + clusters.nests()
                    + " nests differ (design effect "
                    + Wording.number(effect, 2) + (effect < 1 ? ", taken as 1" : "") + "), the " + all
                    + " cells tell as much as "
                    + (clusters.effective() < 1.5
                            ? "a single independent one: so few nests say almost nothing of the others."
                            : Wording.number(clusters.effective(), 0)
                                    + " independent ones, and the limits above allow for that."));
        } else {
            lines.add("Nests that are all alike do not show how far nests differ, so the limits above take the " + all
                    + " cells as independent. With each of the " + clusters.nests() + " nests as one observation"
                    + (answer.total().found() == 0
                            ? ", fewer than "
                                    + tenths(clusters.noneFoundUpperByNest(
                                            answer.question().level())) + " % of nests are affected."
                            : " the limits would be wider."));
        }
    }

    private static void against(List<String> lines, IntervalAnswer answer, String level) {
        Tally other = answer.question().against();
        Limits difference = answer.difference();
        if (other == null || difference == null) {
            return;
        }
        double points = (answer.total().share() - other.share()) * 100;
        lines.add("Against " + words(other) + ", that is "
                + (points == 0
                        ? "no difference"
                        : Wording.number(Math.abs(points), 1) + " points " + (points > 0 ? "more" : "fewer"))
                + "; with " + level + " % confidence the difference lies between " + tenths(difference.low()) + " and "
                + tenths(difference.high()) + " points. "
                + (difference.contains(0)
                        ? "Chance alone may have made it."
                        : "Chance alone would seldom make so much."));
    }

    private static String words(Tally tally) {
        return Wording.number(tally.found(), 0) + " of " + Wording.number(tally.of(), 0) + " (" + tenths(tally.share())
                + " %)";
    }

    private static String range(Limits limits) {
        return tenths(limits.low()) + " and " + tenths(limits.high()) + " %";
    }

    /** Per cent with a decimal, or with as many as a very small share needs. */
    private static String tenths(double share) {
        double percent = Math.abs(share) * 100;
        boolean small = percent > 0 && percent < SMALL_PERCENT;
        int decimals = small ? Math.min(MOST_DECIMALS, 1 - (int) Math.floor(Math.log10(percent))) : 1;
        return Wording.number(share * 100, decimals);
    }

    /** Per cent without needless decimals. */
    static String percent(double share) {
        return Measures.trimmed(share * 100, 4);
    }
}
