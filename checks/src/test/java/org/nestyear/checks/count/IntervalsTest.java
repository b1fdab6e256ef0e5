package org.nestyear.checks.count;

import de.siegmar.fastcsv.reader.NamedCsvRecord;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.nestyear.checks.Comparison;
import org.nestyear.checks.SharedData;
import org.nestyear.core.count.Limits;
import org.nestyear.core.count.ShareLimits;
import org.nestyear.core.count.Tally;

/** The intervals of one share against a general statistics library and a published table. */
@Tag("reference")
class IntervalsTest {
    /** Reference file binomial_intervals.csv: 22 tallies at three levels by statsmodels 0.13.5, printed to 1e-10. */
    @Test
    void intervalsAgreeWithAStatisticsLibrary() {
        Comparison wilson = new Comparison("Wilson limits, share", 1e-9);
        Comparison exact = new Comparison("Clopper-Pearson limits, share", 1e-9);
        for (NamedCsvRecord row : SharedData.rows("reference/stats/binomial_intervals.csv")) {
            Tally tally = tally(row);
            double level = SharedData.number(row, "conf");
            compare(wilson, row, ShareLimits.wilson(tally, level), "wilson");
            compare(exact, row, ShareLimits.clopperPearson(tally, level), "clopper_pearson");
        }
        wilson.check(120);
        exact.check(120);
    }

    /** Newcombe (1998a), Stat. Med. 17:857, Table I, printed to four decimals. */
    @Test
    void intervalsAgreeWithThePublishedTable() {
        Comparison published = new Comparison("limits of Newcombe 1998, share", 5.1e-5);
        for (NamedCsvRecord row : SharedData.rows("reference/stats/newcombe1998_published.csv")) {
            compare(published, row, ShareLimits.wilson(tally(row), 0.95), "wilson");
            compare(published, row, ShareLimits.clopperPearson(tally(row), 0.95), "clopper_pearson");
        }
        published.check(16);
    }

    private static Tally tally(NamedCsvRecord row) {
        return new Tally(SharedData.number(row, "x"), SharedData.number(row, "n"));
    }

    private static void compare(Comparison comparison, NamedCsvRecord row, Limits limits, String columns) {
        String name = row.getField("x") + "/" + row.getField("n") + " " + columns;
        comparison.add(name + " low", limits.low(), SharedData.number(row, columns + "_lo"));
        comparison.add(name + " high", limits.high(), SharedData.number(row, columns + "_hi"));
    }
}
