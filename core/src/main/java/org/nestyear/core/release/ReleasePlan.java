package org.nestyear.core.release;

import java.util.List;
import java.util.Map;
import org.nestyear.core.season.Goal;

/**
 * The computed answer to "when do I put them out?".
 *
 * @param goal the aim the curve was scored by
 * @param curve every candidate date in order, never empty
 * @param window the window under that aim
 * @param windowsByGoal the windows under each aim, side by side
 * @param releases what to put out when, in order; one entry unless a split is worth it
 * @param splitReason stable id of the reason for one or two releases
 * @param ruleOfThumb the trade's rule and its cost
 * @param fixedDate the best fixed calendar date over the past years and its cost
 */
public record ReleasePlan(
        Goal goal,
        List<CurvePoint> curve,
        ReleaseWindow window,
        Map<Goal, ReleaseWindow> windowsByGoal,
        List<Portion> releases,
        String splitReason,
        Alternative ruleOfThumb,
        Alternative fixedDate) {
    public ReleasePlan {
        if (curve.isEmpty() || releases.isEmpty()) {
            throw new IllegalArgumentException("a release plan needs a curve and at least one release");
        }
        curve = List.copyOf(curve);
        windowsByGoal = Map.copyOf(windowsByGoal);
        releases = List.copyOf(releases);
    }
}
