package org.nestyear.core.release;

import java.util.Arrays;
import java.util.List;
import org.nestyear.core.season.Goal;
import org.nestyear.core.stats.Quantiles;
import org.nestyear.core.stats.Redrawing;
import org.nestyear.core.stats.SmallSample;

/**
 * Finds the dates that cannot be told from the best: those whose paired difference from it, over the weather years,
 * includes zero at 90 %, or is too small on average to matter. With few years the years are drawn again with replacement, together with draws of the
 * uncertain parameters, and the result is widened by what so few can leave open; one year alone rules nothing out.
 */
final class WindowFinder {
    /** Lower end of a two-sided 90 % interval; numerical. */
    private static final double LOWER = 0.05;
    /** Re-drawings of the years under each draw of the parameters; numerical. */
    private static final int REDRAWS = 10;

    private static final long SEED = 1;

    private WindowFinder() {}

    /** The candidate with the highest mean score; the earliest of equals. */
    static int best(double[][] scores) {
        int best = 0;
        for (int i = 0; i < scores[0].length; i++) {
            if (Outcomes.mean(scores, i) > Outcomes.mean(scores, best)) {
                best = i;
            }
        }
        return best;
    }

    /**
     * Which candidates belong to the window, by the paired differences over many years.
     *
     * @param outcomes under the catalogue's values
     */
    static boolean[] byYears(Outcomes outcomes, Goal goal) {
        double[][] scores = yearMeans(outcomes, outcomes.scores(goal));
        int best = best(scores);
        boolean[] in = new boolean[scores[0].length];
        double reach = SmallSample.standardErrors(scores.length);
        for (int i = 0; i < in.length; i++) {
            double sum = 0;
            double squares = 0;
            for (double[] row : scores) {
                double difference = row[best] - row[i];
                sum += difference;
                squares += difference * difference;
            }
            double n = scores.length;
            double mean = sum / n;
            double variance = Math.max(0, squares / n - mean * mean) * n / (n - 1);
            in[i] = mean - reach * Math.sqrt(variance / n) <= 0;
        }
        return run(in, best);
    }

    /**
     * Which candidates belong to the window when years are few.
     *
     * @param outcomes under the catalogue's values
     * @param draws under draws of the parameters
     * @param realYears past years behind the members; so many are drawn at a time, however many were invented beside them
     */
    static boolean[] byRedrawing(Outcomes outcomes, List<Outcomes> draws, Goal goal, int realYears) {
        int best = best(outcomes.scores(goal));
        int candidates = outcomes.scores(goal)[0].length;
        double[][] differences = new double[candidates][draws.size() * REDRAWS];
        Redrawing redrawing = new Redrawing(SEED);
        int column = 0;
        for (Outcomes draw : draws) {
            double[][] years = yearMeans(draw, draw.scores(goal));
            for (int b = 0; b < REDRAWS; b++) {
                int[] picked = redrawing.next(realYears, years.length);
                for (int i = 0; i < candidates; i++) {
                    double difference = 0;
                    for (int y : picked) {
                        difference += years[y][best] - years[y][i];
                    }
                    differences[i][column] = difference / picked.length;
                }
                column++;
            }
        }
        boolean[] in = new boolean[candidates];
        double widening = SmallSample.wideningOfBootstrap(realYears);
        for (int i = 0; i < candidates; i++) {
            double mean = Arrays.stream(differences[i]).average().orElse(0);
            in[i] = realYears < 2 || mean - widening * (mean - Quantiles.of(differences[i], LOWER)) <= 0;
        }
        return run(in, best);
    }

    /** Scores by weather year: the mean over the courses of its bloom. */
    private static double[][] yearMeans(Outcomes outcomes, double[][] scores) {
        int years = outcomes.memberOf(outcomes.seasons() - 1) + 1;
        double[][] means = new double[years][scores[0].length];
        int[] courses = new int[years];
        for (int s = 0; s < scores.length; s++) {
            int y = outcomes.memberOf(s);
            courses[y]++;
            for (int i = 0; i < scores[s].length; i++) {
                means[y][i] += scores[s][i];
            }
        }
        for (int y = 0; y < years; y++) {
            for (int i = 0; i < means[y].length; i++) {
                means[y][i] /= courses[y];
            }
        }
        return means;
    }

    /**
     * The same dates with those that lose next to nothing on average, in one run around the best.
     *
     * @param cost largest share of the best mean score that makes no difference
     */
    static boolean[] withSlight(boolean[] close, double[][] scores, double cost) {
        int best = best(scores);
        double floor = Outcomes.mean(scores, best) * (1 - cost);
        boolean[] in = new boolean[close.length];
        for (int i = 0; i < in.length; i++) {
            in[i] = close[i] || Outcomes.mean(scores, i) >= floor;
        }
        return run(in, best);
    }

    /**
     * The dates worth choosing from: those not ruled out whose mean cost is small, in one run around the best, widened
     * to at least {@code least} dates where the run is shorter.
     *
     * @param cost largest share of the best mean score that may be lost
     */
    static boolean[] worthwhile(boolean[] notRuledOut, double[][] scores, double cost, int least) {
        int best = best(scores);
        double floor = Outcomes.mean(scores, best) * (1 - cost);
        boolean[] in = new boolean[notRuledOut.length];
        for (int i = 0; i < in.length; i++) {
            in[i] = notRuledOut[i] && Outcomes.mean(scores, i) >= floor;
        }
        in = run(in, best);
        int from = best;
        int to = best;
        while (from > 0 && in[from - 1]) {
            from--;
        }
        while (to < in.length - 1 && in[to + 1]) {
            to++;
        }
        while (to - from + 1 < Math.min(least, in.length)) {
            boolean earlier = to == in.length - 1
                    || (from > 0 && Outcomes.mean(scores, from - 1) >= Outcomes.mean(scores, to + 1));
            if (earlier) {
                in[--from] = true;
            } else {
                in[++to] = true;
            }
        }
        return in;
    }

    /** Only the unbroken run around the best. */
    private static boolean[] run(boolean[] in, int best) {
        boolean[] run = new boolean[in.length];
        run[best] = true;
        for (int i = best - 1; i >= 0 && in[i]; i--) {
            run[i] = true;
        }
        for (int i = best + 1; i < in.length && in[i]; i++) {
            run[i] = true;
        }
        return run;
    }
}
