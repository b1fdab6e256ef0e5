package org.nestyear.app.book;

import java.util.List;
import org.nestyear.app.service.EitherBee;
import org.nestyear.core.source.ParameterTable;
import org.nestyear.core.source.ReadLog;
import org.nestyear.core.species.Species;
import org.nestyear.data.CatalogueFiles;
import org.nestyear.records.book.Entry;
import org.nestyear.records.book.Search;
import org.nestyear.records.book.Sheets;

/**
 * Females and males of a batch, and how they are known.
 *
 * @param females females, 0 or more
 * @param males males, 0 or more
 * @param from what tells them
 */
record Sexes(int females, int males, String from) {
    /** The batch's own count, else its latest sexing as a share, else the published share. */
    static Sexes of(BookDesk desk, Entry batch) {
        if (batch.whole("females").isPresent()) {
            int females = batch.whole("females").orElse(0);
            int males = batch.whole("males")
                    .orElseGet(() -> Math.max(0, batch.whole("cocoons").orElse(0) - females));
            return new Sexes(females, males, "counted");
        }
        int cocoons = batch.whole("cocoons").orElse(0);
        List<Entry> sexings = desk.list(
                Search.of(Sheets.get("sexing")).where("batch", batch.id()).newest(1, 0));
        if (!sexings.isEmpty()) {
            Entry sexing = sexings.get(0);
            int sexed =
                    sexing.whole("females").orElse(0) + sexing.whole("males").orElse(0);
            if (sexed > 0) {
                return split(
                        cocoons,
                        sexing.whole("females").orElse(0) / (double) sexed,
                        "by " + sexed + " sexed by " + sexing.text("method"));
            }
        }
        Species bee = EitherBee.named(batch.text("species"));
        return split(cocoons, femaleShare(bee), "by the published share, none was sexed");
    }

    /** Published share of females, 0 to 1. */
    static double femaleShare(Species bee) {
        ParameterTable table = EitherBee.isLeafcutter(bee)
                ? CatalogueFiles.sums("leafcutter_nesting")
                : CatalogueFiles.sums("mason_bees");
        return 1 / (1 + new ReadLog(table).value("males_per_female"));
    }

    private static Sexes split(int cocoons, double share, String from) {
        int females = (int) Math.round(cocoons * share);
        return new Sexes(females, cocoons - females, from);
    }
}
