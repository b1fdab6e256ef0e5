package org.nestyear.core.release;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.nestyear.core.season.Batch;
import org.nestyear.core.season.Goal;
import org.nestyear.core.season.Wintered;
import org.nestyear.core.source.ParameterReader;
import org.nestyear.core.stats.Quantiles;

/**
 * One release or two. The score is linear in bees unless tunnels run out, so a split is a weighted mean of two points
 * of one curve and can never beat the best single date on average; it is worth it only where tunnels run out, or as
 * insurance.
 */
final class SplitPlanner {
    /** The worst season in ten; numerical. */
    private static final double TENTH = 0.1;

    /** Shares held back that the dial shows; numerical. */
    private static final double[] DIAL = {0, 0.1, 0.2, 0.3, 0.4, 0.5};

    private final List<MemberModel> members;
    private final Candidates candidates;
    private final Outcomes outcomes;
    private final ParameterReader parameters;
    private final Outcomes.Scale scale;
    private final Batch batch;
    private final double[][] rows;
    private final List<TwoReleases> tables;

    SplitPlanner(
            List<MemberModel> members,
            Candidates candidates,
            Outcomes outcomes,
            Goal goal,
            ParameterReader parameters) {
        this.members = members;
        this.candidates = candidates;
        this.outcomes = outcomes;
        this.parameters = parameters;
        scale = outcomes.scale(goal);
        rows = outcomes.scores(goal);
        batch = members.get(0).stock().batch();
        double small = parameters.value("split_share_small");
        tables = choosesItself()
                ? List.of()
                : TwoReleases.of(members, candidates, new double[] {small, 0.5, 1 - small}, outcomes, scale);
    }

    /**
     * The releases chosen and why.
     *
     * @param gain what they win on average as a share of the best single release, negative for what they cost
     * @param gainInBadYears what they win in the worst season in ten, as a share of the best mean score
     */
    record Split(List<Portion> portions, String reason, double gain, double gainInBadYears) {}

    /** The best of all pairs of dates, taken as if tunnels never ran out; null if none is tried. */
    @Nullable
    BestPair bestPair() {
        int least = (int) parameters.value("split_gap_least_days");
        int most = (int) parameters.value("split_gap_most_days");
        int tried = 0;
        @Nullable BestPair best = null;
        for (TwoReleases table : tables) {
            for (int first = 0; first < candidates.count(); first++) {
                for (int second = first + least; second < Math.min(candidates.count(), first + most + 1); second++) {
                    tried++;
                    double gain = table.score(first, second) - 1;
                    if (best == null || gain > best.gain()) {
                        best = new BestPair(0, candidates.date(first), candidates.date(second), table.share(), gain);
                    }
                }
            }
        }
        return best == null ? null : new BestPair(tried, best.first(), best.second(), best.share(), best.gain());
    }

    private boolean choosesItself() {
        return batch.wintered() == Wintered.UNOPENED || batch.wintered() == Wintered.OUTDOORS;
    }

    /** Chooses around the best single date. */
    Split choose(int best) {
        if (choosesItself()) {
            return new Split(List.of(portion(best, 1)), "own-time", 0, 0);
        }
        if (batch.cocoons() < parameters.value("small_cocoons")
                || batch.females() < parameters.value("small_females")) {
            return new Split(List.of(portion(best, 1)), "small-stock", 0, 0);
        }
        if (outcomes.shareCapped(best) > 0) {
            Split split = search(best);
            if (split.gain() >= parameters.value("split_least_gain")) {
                return split;
            }
        }
        if (batch.males() == 0 || !members.get(0).hasTunnels()) {
            return new Split(List.of(portion(best, 1)), "nothing-to-insure", 0, 0);
        }
        return insured(best);
    }

    /** The best date, and a part held back until the first bees are seen nesting. */
    private Split insured(int best) {
        double held = parameters.value("hold_back");
        int later =
                candidates.nearest(candidates.date(best).plusDays(Math.round(parameters.value("second_release_days"))));
        if (later <= best) {
            return new Split(List.of(portion(best, 1)), "insurance-too-dear", -held, 0);
        }
        Split two = split(best, later, 1 - held, "insurance", Quantiles.of(column(best), TENTH));
        return -two.gain() <= parameters.value("insurance_cost_most")
                ? two
                : new Split(List.of(portion(best, 1)), "insurance-too-dear", two.gain(), two.gainInBadYears());
    }

    /**
     * What comes of holding back each share of a grid, on the best date and the customary days later; empty where bees
     * choose their own day or the second lot would come too late.
     *
     * @param odds the odds of a small stock put out in one lot, or null for a larger one
     */
    List<HoldBack> dial(int best, @Nullable WholeBeeOdds odds) {
        int later =
                candidates.nearest(candidates.date(best).plusDays(Math.round(parameters.value("second_release_days"))));
        if (choosesItself() || later <= best) {
            return List.of();
        }
        double worstAlone = Quantiles.of(column(best), TENTH);
        double struck = parameters.value("lot_lost_chance");
        double leftOfAll = Outcomes.mean(rows, later);
        List<HoldBack> dial = new ArrayList<>();
        for (double share : DIAL) {
            boolean two = share > 0;
            @Nullable Split split = two ? split(best, later, 1 - share, "", worstAlone) : null;
            double none = odds == null ? noneSettles() : two ? smallNone(best, later, 1 - share) : odds.noneSettles();
            double both = two ? struck * struck : struck;
            dial.add(new HoldBack(
                    share,
                    candidates.date(two ? later : best),
                    split == null ? 0 : -split.gain(),
                    split == null ? 0 : split.gainInBadYears(),
                    both + (1 - both) * none,
                    share * leftOfAll));
        }
        return dial;
    }

    /** Chance that no female settles after the last release run, by Poisson's law. */
    private double noneSettles() {
        return members.stream()
                .mapToDouble(member -> Math.exp(-member.settled(0)))
                .average()
                .orElse(1);
    }

    private double smallNone(int first, int second, double share) {
        return WholeBees.odds(members, candidates.date(first), candidates.date(second), share)
                .noneSettles();
    }

    private double[] column(int candidate) {
        double[] scores = new double[rows.length];
        for (int s = 0; s < scores.length; s++) {
            scores[s] = rows[s][candidate];
        }
        return scores;
    }

    private Split search(int best) {
        int step = (int) parameters.value("split_gap_step_days");
        int least = (int) parameters.value("split_gap_least_days");
        int most = (int) parameters.value("split_gap_most_days");
        Split winner = new Split(List.of(portion(best, 1)), "tunnels-run-out", 0, 0);
        double worstAlone = Quantiles.of(column(best), TENTH);
        for (int first = Math.max(0, best - most); first <= best; first += step) {
            for (int gap = least; gap <= most && first + gap < candidates.count(); gap += step) {
                for (TwoReleases table : tables) {
                    // With tunnels enough it would win no more than this, so it need not be run.
                    if (table.score(first, first + gap) - 1 > winner.gain()) {
                        Split split = split(first, first + gap, table.share(), "tunnels-run-out", worstAlone);
                        winner = split.gain() > winner.gain() ? split : winner;
                    }
                }
            }
        }
        return winner;
    }

    private Split split(int first, int second, double share, String reason, double worstAlone) {
        int zero = members.get(0).weather().index(candidates.first());
        List<Double> scores = new ArrayList<>();
        for (MemberModel member : members) {
            member.release(zero + first, zero + second, share);
            for (int k = 0; k < member.courses(); k++) {
                scores.add(scale.score(member.daughters(k), member.bloomDays(k)));
            }
        }
        double[] all = scores.stream().mapToDouble(Double::doubleValue).toArray();
        double mean = scores.stream().mapToDouble(Double::doubleValue).average().orElse(0);
        Portion now = portion(first, share);
        Portion later =
                new Portion(candidates.date(second), batch.females() - now.females(), batch.males() - now.males());
        return new Split(List.of(now, later), reason, mean - 1, Quantiles.of(all, TENTH) - worstAlone);
    }

    private Portion portion(int candidate, double share) {
        return new Portion(candidates.date(candidate), (int) Math.round(batch.females() * share), (int)
                Math.round(batch.males() * share));
    }
}
