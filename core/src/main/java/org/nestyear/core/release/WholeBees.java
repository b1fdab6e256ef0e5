package org.nestyear.core.release;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.nestyear.core.nesting.WholeBeeRun;
import org.nestyear.core.season.Batch;
import org.nestyear.core.source.ParameterReader;
import org.nestyear.core.stats.Draws;
import org.nestyear.core.stats.Quantiles;

/** Runs a small stock bee by bee: with few bees the mean hides that all may be lost. */
final class WholeBees {
    /** Runs over all seasons together; numerical. */
    private static final int RUNS = 2000;
    /** Lower end of a band; numerical. */
    private static final double TENTH = 0.1;

    private static final double HALF = 0.5;
    /** Upper end of a band; numerical. */
    private static final double NINE_TENTHS = 0.9;

    private static final long SEED = 1;

    private WholeBees() {}

    /** True for a stock that gets whole-bee odds. */
    static boolean isSmall(Batch batch, ParameterReader parameters) {
        return batch.cocoons() < parameters.value("small_cocoons")
                || batch.females() < parameters.value("small_females");
    }

    /** The odds of one release on a date. */
    static WholeBeeOdds odds(List<MemberModel> members, LocalDate date) {
        return odds(members, date, date, 1);
    }

    /**
     * The odds of two releases.
     *
     * @param share share put out on the first date, 0 to 1; the rest on the second
     */
    static WholeBeeOdds odds(List<MemberModel> members, LocalDate date, LocalDate second, double share) {
        Draws draws = new Draws(SEED);
        int seasons = members.stream().mapToInt(MemberModel::courses).sum();
        int each = Math.max(1, RUNS / seasons);
        List<Double> daughters = new ArrayList<>();
        double noneSettles = 0;
        double noDaughter = 0;
        for (MemberModel member : members) {
            int first = member.weather().index(date);
            if (share < 1) {
                member.release(first, member.weather().index(second), share);
            } else {
                member.release(first);
            }
            for (int k = 0; k < member.courses(); k++) {
                WholeBeeRun run = member.wholeBees(k);
                for (int r = 0; r < each; r++) {
                    WholeBeeRun.Result result = run.next(draws);
                    daughters.add((double) result.daughters());
                    noneSettles += result.settled() == 0 ? 1 : 0;
                    noDaughter += result.daughters() == 0 ? 1 : 0;
                }
            }
        }
        double[] all = daughters.stream().mapToDouble(Double::doubleValue).toArray();
        return new WholeBeeOdds(
                all.length,
                noneSettles / all.length,
                noDaughter / all.length,
                Quantiles.of(all, TENTH),
                Quantiles.of(all, HALF),
                Quantiles.of(all, NINE_TENTHS));
    }
}
