package org.nestyear.app.book;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.nestyear.app.service.EitherBee;
import org.nestyear.app.service.Refusal;
import org.nestyear.data.TextSource;
import org.nestyear.records.book.Entry;
import org.nestyear.records.book.Search;
import org.nestyear.records.book.Sheet;
import org.nestyear.records.book.Sheets;

/** A stock's years at one site as the records tell them, as a table of the command {@code years}. */
public final class StockYears {
    private final BookDesk desk;
    private final Entry site;
    private final String species;

    private StockYears(BookDesk desk, Entry site, String species) {
        this.desk = desk;
        this.site = site;
        this.species = species;
    }

    /** What one spring began with and brought; −1 where it is not known. */
    private static final class Kept {
        private int out;
        private int bought;
        private int given;
        private int joined;
        private int daughters = -1;
        private int alive = -1;
        private int cells = -1;
    }

    /**
     * The table.
     *
     * @throws Refusal if no bee of that kind was ever put out there
     */
    public static TextSource table(RecordsDesk records, String siteName, String species) {
        BookDesk desk = records.desk();
        Entry site = KeptSeason.site(desk, siteName);
        StockYears years = new StockYears(desk, site, EitherBee.named(species).latinName());
        return TextSource.ofTexts("years.csv", Map.of("years.csv", years.csv()));
    }

    private String csv() {
        TreeMap<Integer, Kept> years = new TreeMap<>();
        for (int year : KeptSeason.yearsFlown(desk, site, species)) {
            years.put(year, new Kept());
        }
        if (years.isEmpty()) {
            throw new Refusal(
                    Refusal.Kind.NO_ANSWER,
                    "NY-RECORDS-LACK",
                    site.text(Sheet.NAME),
                    "no release of " + species + " is written down there; expected one year at least.",
                    "Maybe write it down with nestyear enter release.");
        }
        batches(years);
        openings(years);
        transfersOut(years);
        List<String> lines = new ArrayList<>(List.of("year,females_out,daughters,cocoons,cells,bought,given,joined"));
        years.forEach((year, kept) -> lines.add(year + "," + kept.out + "," + told(kept.daughters) + ","
                + told(kept.alive) + "," + told(kept.cells) + "," + Math.min(kept.bought, kept.out) + "," + kept.given
                + "," + kept.joined));
        return String.join("\n", lines) + "\n";
    }

    private void batches(Map<Integer, Kept> years) {
        for (Entry batch : desk.list(
                Search.of(Sheets.get("batch")).where("site", site.id()).where("species", species))) {
            int year = batch.whole("year").orElseThrow();
            Sexes sexes = Sexes.of(desk, batch);
            Kept kept = years.get(year);
            if (kept != null) {
                switch (batch.text("came_by")) {
                    case "joined from the wild" -> kept.joined += sexes.females();
                    case "own nests" -> kept.out += sexes.females();
                    default -> {
                        kept.out += sexes.females();
                        kept.bought += sexes.females();
                    }
                }
            }
            Kept before = years.get(year - 1);
            if (before != null && batch.text("came_by").equals("own nests")) {
                before.daughters = Math.max(0, before.daughters) + sexes.females();
            }
        }
    }

    private void openings(Map<Integer, Kept> years) {
        for (Entry opening : desk.list(
                Search.of(Sheets.get("opening")).where("site", site.id()).where("species", species))) {
            Kept kept = years.get(opening.whole("year").orElseThrow());
            if (kept != null) {
                kept.alive = Math.max(0, kept.alive);
                kept.cells = Math.max(0, kept.cells);
                desk.book().each(desk.owner(), Search.of(Sheets.get("tally")).where("opening", opening.id()), tally -> {
                    int cells = tally.whole("cells").orElse(0);
                    kept.cells += cells;
                    if (tally.text("found").equals("alive")) {
                        kept.alive += cells;
                    }
                });
            }
        }
    }

    // Given away in autumn or winter is missing in the spring that follows; daughters of the year before count them.
    private void transfersOut(Map<Integer, Kept> years) {
        for (Entry transfer : desk.list(Search.of(Sheets.get("transfer"))
                .where("site", site.id())
                .where("species", species)
                .where("direction", "out"))) {
            int built = transfer.whole("harvest_year")
                    .orElseGet(() -> transfer.date("on_date").orElseThrow().getYear());
            int females = transfer.whole("females").orElseGet(() -> (int)
                    Math.round(transfer.whole("cocoons").orElse(0) * Sexes.femaleShare(EitherBee.named(species))));
            Kept spring = years.get(built + 1);
            if (spring != null) {
                spring.given += females;
            }
            Kept before = years.get(built);
            if (before != null && before.daughters >= 0) {
                before.daughters += females;
            }
        }
    }

    private static String told(int number) {
        return number < 0 ? "" : Integer.toString(number);
    }
}
