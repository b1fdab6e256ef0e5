package org.nestyear.core.release;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The mean score of every pair of dates at once, for a given share of the batch on the first. Exact while no tunnels run
 * out, else more than the pair can give. Live males of both releases are about together, so a pair is not quite the
 * weighted mean of its dates: a female of one may be mated by a male of the other.
 */
final class TwoReleases {
    private final double share;
    /** By first date; the row of each begins with itself as second date. */
    private final double[][] scores;

    private TwoReleases(double share, int candidates) {
        this.share = share;
        scores = IntStream.range(0, candidates)
                .mapToObj(i -> new double[candidates - i])
                .toArray(double[][]::new);
    }

    /**
     * Scores every pair.
     *
     * @param shares shares of the batch put out on the first date, 0 to 1
     * @param outcomes of single releases on the same dates
     * @param scale what makes a score
     * @return one table for each share
     */
    static List<TwoReleases> of(
            List<MemberModel> members,
            Candidates candidates,
            double[] shares,
            Outcomes outcomes,
            Outcomes.Scale scale) {
        List<TwoReleases> tables = Arrays.stream(shares)
                .mapToObj(share -> new TwoReleases(share, candidates.count()))
                .toList();
        for (MemberModel member : members) {
            int first = member.weather().index(candidates.first());
            double[] value = member.daughtersOfAFemale();
            List<Release> releases = IntStream.range(first, first + candidates.count())
                    .mapToObj(day -> Release.of(member, day, value))
                    .toList();
            tables.forEach(table -> table.add(releases));
        }
        tables.forEach(table -> table.score(outcomes, scale));
        return tables;
    }

    /**
     * Adds a member's daughters. With f females out on a day, v daughters to each and m live males they are f·v·(1 − e^−m);
     * the males of two releases add up, so that e^−m is a product.
     */
    private void add(List<Release> releases) {
        List<Side> early = releases.stream().map(r -> r.side(share)).toList();
        List<Side> late = releases.stream().map(r -> r.side(1 - share)).toList();
        for (int i = 0; i < scores.length; i++) {
            Side one = early.get(i);
            for (int j = i; j < scores.length; j++) {
                Side two = late.get(j);
                scores[i][j - i] += one.young + two.young - one.unmated(two) - two.unmated(one);
            }
        }
    }

    private void score(Outcomes outcomes, Outcomes.Scale scale) {
        for (int i = 0; i < scores.length; i++) {
            for (int j = i; j < scores.length; j++) {
                double bloomDays = share * outcomes.meanBloomDays(i) + (1 - share) * outcomes.meanBloomDays(j);
                scores[i][j - i] = scale.score(scores[i][j - i] / outcomes.seasons(), bloomDays);
            }
        }
    }

    /** Share of the batch put out on the first date, 0 to 1. */
    double share() {
        return share;
    }

    /** Mean score of a pair as a share of the best single date's; {@code second} is not before {@code first}. */
    double score(int first, int second) {
        return scores[first][second - first];
    }

    /** The whole batch put out on one date of one member. */
    private static final class Release {
        /** First day on which a female comes out, and the day after the last. */
        private final int from;

        private final int to;
        /** By day of coming out, daughters if all were mated. */
        private final double[] young;
        /** Live males by day. */
        private final double[] males;

        private Release(int from, int to, double[] young, double[] males) {
            this.from = from;
            this.to = to;
            this.young = young;
            this.males = males;
        }

        static Release of(MemberModel member, int day, double[] value) {
            double[] young = new double[value.length];
            double[] males = new double[value.length];
            member.comeOut(day, 1, young, males);
            member.keepAlive(males);
            int from = value.length;
            int to = 0;
            for (int d = day; d < value.length; d++) {
                if (young[d] > 0) {
                    from = Math.min(from, d);
                    to = d + 1;
                    young[d] *= value[d];
                }
            }
            return new Release(from, to, young, males);
        }

        Side side(double share) {
            double sum = 0;
            double[] noMale = new double[males.length];
            double[] unmated = new double[males.length];
            for (int d = 0; d < noMale.length; d++) {
                noMale[d] = males[d] > 0 ? Math.exp(-share * males[d]) : 1;
                sum += share * young[d];
                unmated[d] = share * young[d] * noMale[d];
            }
            return new Side(from, to, sum, unmated, noMale);
        }
    }

    /** A share of such a batch. */
    private static final class Side {
        private final int from;
        private final int to;
        /** Daughters if all were mated. */
        private final double young;
        /** By day, daughters never laid if no other male is about. */
        private final double[] alone;
        /** By day, the chance that none of these males is about. */
        private final double[] noMale;

        private Side(int from, int to, double young, double[] alone, double[] noMale) {
            this.from = from;
            this.to = to;
            this.young = young;
            this.alone = alone;
            this.noMale = noMale;
        }

        /** Daughters never laid since no male of either side is about when their mothers come out. */
        double unmated(Side other) {
            double sum = 0;
            for (int d = from; d < to; d++) {
                sum += alone[d] * other.noMale[d];
            }
            return sum;
        }
    }
}
