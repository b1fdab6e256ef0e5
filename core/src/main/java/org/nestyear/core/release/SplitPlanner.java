package org.nestyear.core.release;

import java.util.List;
import org.nestyear.core.season.Batch;
import org.nestyear.core.season.Goal;
import org.nestyear.core.season.Wintered;
import org.nestyear.core.source.ParameterReader;

/**
 * One release or two. The score is linear in bees unless tunnels run out, so a split is a weighted mean of two points
 * of one curve and can never beat the best single date on average; it is worth it only where tunnels run out, or as
 * insurance.
 */
final class SplitPlanner {
    private final List<MemberModel> members;
    private final Stock stock;
    private final Candidates candidates;
    private final Outcomes outcomes;
    private final Goal goal;
    private final ParameterReader parameters;

    SplitPlanner(
            List<MemberModel> members,
            Stock stock,
            Candidates candidates,
            Outcomes outcomes,
            Goal goal,
            ParameterReader parameters) {
        this.members = members;
        this.stock = stock;
        this.candidates = candidates;
        this.outcomes = outcomes;
        this.goal = goal;
        this.parameters = parameters;
    }

    /** The releases chosen, why, and what they win or cost as a share of the best single release. */
    record Split(List<Portion> portions, String reason, double gain) {}

    /** Chooses around the best single date. */
    Split choose(int best) {
        Batch batch = stock.batch();
        if (batch.wintered() == Wintered.UNOPENED || batch.wintered() == Wintered.OUTDOORS) {
            return new Split(List.of(portion(best, 1)), "own-time", 0);
        }
        if (batch.cocoons() < parameters.value("small_cocoons")
                || batch.females() < parameters.value("small_females")) {
            return new Split(List.of(portion(best, 1)), "small-stock", 0);
        }
        if (outcomes.shareCapped(best) > 0) {
            Split split = search(best);
            if (split.gain() >= parameters.value("split_least_gain")) {
                return split;
            }
        }
        double held = parameters.value("hold_back");
        int later =
                candidates.nearest(candidates.date(best).plusDays(Math.round(parameters.value("second_release_days"))));
        if (later <= best) {
            return new Split(List.of(portion(best, 1)), "insurance-too-dear", -held);
        }
        Split insured = split(best, later, 1 - held, "insurance");
        return -insured.gain() <= parameters.value("insurance_cost_most")
                ? insured
                : new Split(List.of(portion(best, 1)), "insurance-too-dear", insured.gain());
    }

    private Split search(int best) {
        int step = (int) parameters.value("split_gap_step_days");
        int least = (int) parameters.value("split_gap_least_days");
        int most = (int) parameters.value("split_gap_most_days");
        double[] shares = {parameters.value("split_share_small"), 0.5, 1 - parameters.value("split_share_small")};
        Split winner = new Split(List.of(portion(best, 1)), "tunnels-run-out", 0);
        for (int first = Math.max(0, best - most); first <= best; first += step) {
            for (int gap = least; gap <= most && first + gap < candidates.count(); gap += step) {
                for (double share : shares) {
                    Split split = split(first, first + gap, share, "tunnels-run-out");
                    winner = split.gain() > winner.gain() ? split : winner;
                }
            }
        }
        return winner;
    }

    private Split split(int first, int second, double share, String reason) {
        double daughters = 0;
        double bloomDays = 0;
        int seasons = 0;
        for (MemberModel member : members) {
            int zero = member.weather().index(candidates.first());
            Score[] scores = new Score[member.courses()];
            member.score(stock, new int[] {zero + first, zero + second}, new double[] {share, 1 - share}, scores);
            for (Score score : scores) {
                daughters += score.daughters();
                bloomDays += score.bloomDays();
                seasons++;
            }
        }
        double gain = outcomes.relative(goal, daughters / seasons, bloomDays / seasons) - 1;
        Portion now = portion(first, share);
        Batch batch = stock.batch();
        Portion later =
                new Portion(candidates.date(second), batch.females() - now.females(), batch.males() - now.males());
        return new Split(List.of(now, later), reason, gain);
    }

    private Portion portion(int candidate, double share) {
        Batch batch = stock.batch();
        return new Portion(candidates.date(candidate), (int) Math.round(batch.females() * share), (int)
                Math.round(batch.males() * share));
    }
}
