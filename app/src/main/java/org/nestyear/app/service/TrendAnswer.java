package org.nestyear.app.service;

import java.util.Map;
import java.util.SortedMap;
import org.nestyear.core.count.Limits;
import org.nestyear.core.outlook.GrowthFit;
import org.nestyear.data.DataFault;
import org.nestyear.data.TextSource;
import org.nestyear.data.YearCountsCsv;

/**
 * How a stock grew, and how likely it comes to a number.
 *
 * @param firstYear year of the first count
 * @param lastYear year of the last count
 * @param mu interval of the mean yearly change of the logarithm
 * @param sigma2 interval of its variance
 * @param target number to come to
 * @param reach chance to come to it
 * @param reachRange what the counts leave open about that chance
 * @param fingerprint sixteen characters that change with the question, the counts or the version
 */
public record TrendAnswer(
        TrendQuestion question,
        int firstYear,
        int lastYear,
        GrowthFit fit,
        Limits mu,
        Limits sigma2,
        double target,
        double reach,
        Limits reachRange,
        String fingerprint) {
    private static final int FEWEST_COUNTS = 3;

    /**
     * Answers the question.
     *
     * @throws Refusal if the table is wrong, holds fewer than three counts, or a count of nothing
     */
    public static TrendAnswer of(TrendQuestion question) {
        SortedMap<Integer, Double> counts;
        try {
            counts = YearCountsCsv.read(TextSource.ofFile(question.counts()));
        } catch (DataFault fault) {
            throw Refusal.of(fault);
        }
        refuseWhatHasNoTrend(question.counts().toString(), counts);
        GrowthFit fit = GrowthFit.of(counts);
        double level = question.level();
        double half = fit.muHalfWidth(level);
        Double told = question.target();
        double target = told == null ? 2 * fit.last() : told;
        double[] range = fit.reachRange(target, question.withinYears(), level);
        Fingerprint print = new Fingerprint("");
        print.add(counts);
        print.add(target);
        print.add(question.withinYears());
        print.add(level);
        return new TrendAnswer(
                question,
                counts.firstKey(),
                counts.lastKey(),
                fit,
                new Limits(fit.mu() - half, fit.mu() + half),
                new Limits(fit.sigma2Low(level), fit.sigma2High(level)),
                target,
                fit.reach(target, question.withinYears()),
                new Limits(range[0], range[1]),
                print.digits());
    }

    private static void refuseWhatHasNoTrend(String file, SortedMap<Integer, Double> counts) {
        for (Map.Entry<Integer, Double> count : counts.entrySet()) {
            if (!(count.getValue() > 0)) {
                throw new Refusal(
                        Refusal.Kind.NO_ANSWER,
                        "NY-TREND-NOTHING",
                        file,
                        "the count of " + count.getKey() + " is 0, and a stock that is gone has no growth.",
                        "Maybe begin the table with the year in which bees were bought or came again.");
            }
        }
        if (counts.size() < FEWEST_COUNTS) {
            throw new Refusal(
                    Refusal.Kind.NO_ANSWER,
                    "NY-TREND-FEW",
                    file,
                    "the table holds " + (counts.size() == 1 ? "1 count" : counts.size() + " counts")
                            + ", and fewer than 3 show no trend.",
                    "");
        }
    }
}
