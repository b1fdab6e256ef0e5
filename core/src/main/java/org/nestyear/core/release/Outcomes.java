package org.nestyear.core.release;

import java.util.List;
import org.nestyear.core.season.Goal;

/**
 * What each candidate date gives in each possible season (a weather member with one course of its bloom).
 * Rows are seasons, columns candidates.
 */
final class Outcomes {
    private final double[][] daughters;
    private final double[][] bloomDays;
    private final double[][] settled;
    private final boolean[][] capped;
    private final int[] year;

    private Outcomes(int seasons, int candidates) {
        daughters = new double[seasons][candidates];
        bloomDays = new double[seasons][candidates];
        settled = new double[seasons][candidates];
        capped = new boolean[seasons][candidates];
        year = new int[seasons];
    }

    /** Tries one release on every candidate date in every member. */
    static Outcomes of(List<MemberModel> members, Stock stock, Candidates candidates) {
        int seasons = members.stream().mapToInt(MemberModel::courses).sum();
        Outcomes outcomes = new Outcomes(seasons, candidates.count());
        int row = 0;
        for (int m = 0; m < members.size(); m++) {
            MemberModel member = members.get(m);
            int first = member.weather().index(candidates.first());
            Score[] scores = new Score[member.courses()];
            int[] release = new int[1];
            double[] all = {1};
            for (int i = 0; i < candidates.count(); i++) {
                release[0] = first + i;
                member.score(stock, release, all, scores);
                for (int k = 0; k < scores.length; k++) {
                    outcomes.put(row + k, i, scores[k]);
                }
            }
            for (int k = 0; k < scores.length; k++) {
                outcomes.year[row + k] = m;
            }
            row += scores.length;
        }
        return outcomes;
    }

    private void put(int season, int candidate, Score score) {
        daughters[season][candidate] = score.daughters();
        bloomDays[season][candidate] = score.bloomDays();
        settled[season][candidate] = score.settled();
        capped[season][candidate] = score.capped();
    }

    int seasons() {
        return year.length;
    }

    /** Number of the weather member that a season belongs to. */
    int memberOf(int season) {
        return year[season];
    }

    double meanDaughters(int candidate) {
        return mean(daughters, candidate);
    }

    double meanBloomDays(int candidate) {
        return mean(bloomDays, candidate);
    }

    /** Share of seasons in which tunnels run out for this candidate. */
    double shareCapped(int candidate) {
        double n = 0;
        for (boolean[] row : capped) {
            n += row[candidate] ? 1 : 0;
        }
        return n / capped.length;
    }

    double settled(int season, int candidate) {
        return settled[season][candidate];
    }

    double daughters(int season, int candidate) {
        return daughters[season][candidate];
    }

    /**
     * Scores under a goal: brood and bloom each as a share of the best that any date gives on average, halved and
     * added for {@link Goal#BOTH}; then as a share of the best mean score.
     *
     * @return [season][candidate]; all 0 when no date gives anything
     */
    double[][] scores(Goal goal) {
        double[][] scores = new double[daughters.length][daughters[0].length];
        double brood = broodWeight(goal);
        double bloom = bloomWeight(goal);
        for (int s = 0; s < scores.length; s++) {
            for (int i = 0; i < scores[s].length; i++) {
                scores[s][i] = brood * daughters[s][i] + bloom * bloomDays[s][i];
            }
        }
        double scale = inverse(best(scores));
        for (double[] row : scores) {
            for (int i = 0; i < row.length; i++) {
                row[i] *= scale;
            }
        }
        return scores;
    }

    /** A mean outcome that is none of the candidates, as a share of the best candidate's mean score. */
    double relative(Goal goal, double meanDaughters, double meanBloomDays) {
        double best = 0;
        for (int i = 0; i < daughters[0].length; i++) {
            best = Math.max(best, broodWeight(goal) * meanDaughters(i) + bloomWeight(goal) * meanBloomDays(i));
        }
        return inverse(best) * (broodWeight(goal) * meanDaughters + bloomWeight(goal) * meanBloomDays);
    }

    private double broodWeight(Goal goal) {
        return goal == Goal.BLOOM ? 0 : inverse(best(daughters));
    }

    private double bloomWeight(Goal goal) {
        return goal == Goal.BROOD ? 0 : inverse(best(bloomDays));
    }

    private static double inverse(double best) {
        return best > 0 ? 1 / best : 0;
    }

    private static double best(double[][] values) {
        double best = 0;
        for (int i = 0; i < values[0].length; i++) {
            best = Math.max(best, mean(values, i));
        }
        return best;
    }

    /** Mean over all rows of column {@code i}. */
    static double mean(double[][] values, int i) {
        double sum = 0;
        for (double[] row : values) {
            sum += row[i];
        }
        return sum / values.length;
    }
}
