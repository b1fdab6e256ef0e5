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
    private final boolean[][] capped;
    private final int[] year;

    private Outcomes(int seasons, int candidates) {
        daughters = new double[seasons][candidates];
        bloomDays = new double[seasons][candidates];
        capped = new boolean[seasons][candidates];
        year = new int[seasons];
    }

    /** Tries one release on every candidate date in every member. */
    static Outcomes of(List<MemberModel> members, Candidates candidates) {
        int seasons = members.stream().mapToInt(MemberModel::courses).sum();
        Outcomes outcomes = new Outcomes(seasons, candidates.count());
        int row = 0;
        for (int m = 0; m < members.size(); m++) {
            MemberModel member = members.get(m);
            int first = member.weather().index(candidates.first());
            for (int i = 0; i < candidates.count(); i++) {
                member.release(first + i);
                for (int k = 0; k < member.courses(); k++) {
                    outcomes.daughters[row + k][i] = member.daughters(k);
                    outcomes.bloomDays[row + k][i] = member.bloomDays(k);
                    outcomes.capped[row + k][i] = member.capped(k);
                }
            }
            for (int k = 0; k < member.courses(); k++) {
                outcomes.year[row + k] = m;
            }
            row += member.courses();
        }
        return outcomes;
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

    /**
     * Scores under a goal: brood and bloom each as a share of the best that any date gives on average, halved and
     * added for {@link Goal#BOTH}; then as a share of the best mean score.
     *
     * @return [season][candidate]; all 0 when no date gives anything
     */
    double[][] scores(Goal goal) {
        double[][] scores = new double[daughters.length][daughters[0].length];
        Scale scale = scale(goal);
        for (int s = 0; s < scores.length; s++) {
            for (int i = 0; i < scores[s].length; i++) {
                scores[s][i] = scale.score(daughters[s][i], bloomDays[s][i]);
            }
        }
        return scores;
    }

    /** What makes a score of daughters and of flight days in the target bloom. */
    record Scale(double aDaughter, double aBloomDay) {
        double score(double daughters, double bloomDays) {
            return aDaughter * daughters + aBloomDay * bloomDays;
        }
    }

    /** The scale under which the best candidate's mean score is 1. */
    Scale scale(Goal goal) {
        double brood = broodWeight(goal);
        double bloom = bloomWeight(goal);
        double best = 0;
        for (int i = 0; i < daughters[0].length; i++) {
            best = Math.max(best, brood * meanDaughters(i) + bloom * meanBloomDays(i));
        }
        return new Scale(brood * inverse(best), bloom * inverse(best));
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
