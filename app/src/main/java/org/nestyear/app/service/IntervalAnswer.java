package org.nestyear.app.service;

import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.nestyear.core.count.Limits;
import org.nestyear.core.count.NestTallies;
import org.nestyear.core.count.ShareLimits;
import org.nestyear.core.count.Tally;

/**
 * The intervals of a share.
 *
 * @param total all that was counted
 * @param clusters what counting by nest changes, or null when the nests were not told
 * @param wilson the score interval
 * @param clopperPearson the exact interval
 * @param difference the interval of the share less the other one, or null without another
 * @param noneFoundUpper the one-sided upper bound when none was found
 * @param fingerprint sixteen characters that change with the question or the version
 */
public record IntervalAnswer(
        IntervalQuestion question,
        Tally total,
        @Nullable Clusters clusters,
        Limits wilson,
        Limits clopperPearson,
        @Nullable Limits difference,
        OptionalDouble noneFoundUpper,
        String fingerprint) {

    /** Answers the question. */
    public static IntervalAnswer of(IntervalQuestion question) {
        double level = question.level();
        Tally total = question.counted().get(0);
        Tally counts = total;
        Clusters clusters = null;
        if (question.isByNest()) {
            NestTallies nests = new NestTallies(question.counted());
            total = nests.total();
            counts = nests.effective(level);
            clusters = new Clusters(nests.nests().size(), nests.designEffect(), counts.of());
        }
        Limits wilson = ShareLimits.wilson(counts, level);
        Tally other = question.against();
        Limits difference = other == null
                ? null
                : ShareLimits.difference(
                        new ShareLimits.Estimate(total.share(), wilson),
                        new ShareLimits.Estimate(other.share(), ShareLimits.wilson(other, level)));
        Fingerprint print = new Fingerprint("");
        print.add(question);
        return new IntervalAnswer(
                question,
                total,
                clusters,
                wilson,
                ShareLimits.clopperPearson(counts, level),
                difference,
                total.found() == 0
                        ? OptionalDouble.of(ShareLimits.noneFoundUpper(total.of(), level))
                        : OptionalDouble.empty(),
                print.digits());
    }

    /**
     * What counting by nest changes.
     *
     * @param designEffect how many times wider the variance is than without nests; empty when none or all were found
     * @param effective independent cells that say as much as all those counted
     */
    public record Clusters(int nests, OptionalDouble designEffect, double effective) {
        /** With nests as the units, the one-sided upper bound when none of them held any. */
        public double noneFoundUpperByNest(double level) {
            return ShareLimits.noneFoundUpper(nests, level);
        }
    }
}
