package org.nestyear.core.release;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.nestyear.core.season.Goal;

/**
 * The computed answer to "when do I put them out?".
 *
 * @param goal the aim the curve was scored by
 * @param curve every candidate date in order, never empty
 * @param window the dates to choose from under that aim: not ruled out, and cheap on average
 * @param notRuledOut all dates around the best that the weather years cannot tell from it at 90 %, or that lose next to
 *     nothing; holds the window
 * @param windowsByGoal the windows under each aim, side by side
 * @param releases what to put out when, in order; one entry unless a split is worth it
 * @param splitReason why one or two: {@code small-stock}, {@code own-time}, {@code tunnels-run-out},
 *     {@code insurance}, {@code insurance-too-dear} or {@code nothing-to-insure}
 * @param splitGain share of the single release's score that the split wins, negative for what insurance costs
 * @param splitGainInBadYears what the split wins in the worst season in ten, as a share of the best mean score
 * @param holdBack what comes of holding back each share of a grid, none first; empty where bees choose their own day or
 *     a second lot would come too late
 * @param bestPair the best of all pairs of dates were there tunnels enough; null where the bees choose their own day or
 *     no pair lies far enough apart
 * @param agreement how many draws of the uncertain parameters agree with the window
 * @param ruleOfThumb the trade's rule and its cost
 * @param fixedDate the best fixed calendar date over the past years and its cost
 * @param sensitivities how far the best date moves when uncertain things change
 * @param shareCapped share of possible seasons in which tunnels run out
 * @param missedBloom share of possible seasons in which target bloom is over before half the females are out
 * @param odds what may come of a small stock, counted bee by bee; null for a larger one
 */
public record ReleasePlan(
        Goal goal,
        List<CurvePoint> curve,
        ReleaseWindow window,
        ReleaseWindow notRuledOut,
        Map<Goal, ReleaseWindow> windowsByGoal,
        List<Portion> releases,
        String splitReason,
        double splitGain,
        double splitGainInBadYears,
        List<HoldBack> holdBack,
        @Nullable BestPair bestPair,
        Agreement agreement,
        Alternative ruleOfThumb,
        Alternative fixedDate,
        List<Sensitivity> sensitivities,
        double shareCapped,
        double missedBloom,
        @Nullable WholeBeeOdds odds) {
    public ReleasePlan {
        if (curve.isEmpty() || releases.isEmpty()) {
            throw new IllegalArgumentException("a release plan needs a curve and at least one release");
        }
        curve = List.copyOf(curve);
        windowsByGoal = Map.copyOf(windowsByGoal);
        releases = List.copyOf(releases);
        holdBack = List.copyOf(holdBack);
        sensitivities = List.copyOf(sensitivities);
    }

    /** The date that costs nothing: the best, whatever the window. */
    public LocalDate bestDate() {
        CurvePoint best = curve.get(0);
        for (CurvePoint point : curve) {
            if (point.cost() < best.cost()) {
                best = point;
            }
        }
        return best.date();
    }
}
