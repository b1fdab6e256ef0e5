package org.nestyear.app.book;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.nestyear.app.service.EitherBee;
import org.nestyear.app.service.Refusal;
import org.nestyear.data.TextSource;
import org.nestyear.records.book.Entry;
import org.nestyear.records.book.Search;
import org.nestyear.records.book.Sheet;
import org.nestyear.records.book.Sheets;

/** What openings at a site found, as a tally of the command {@code losses}: a line a tunnel or nest. */
public final class OpenedKept {
    private static final String ALIVE = "alive";

    private OpenedKept() {}

    /**
     * The tally.
     *
     * @param year year the nests were built in, or 0 for all
     * @throws Refusal if nothing was opened there
     */
    public static TextSource tally(RecordsDesk records, String siteName, String species, int year) {
        BookDesk desk = records.desk();
        Entry site = KeptSeason.site(desk, siteName);
        Search openings = Search.of(Sheets.get("opening"))
                .where("site", site.id())
                .where("species", EitherBee.named(species).latinName());
        if (year != 0) {
            openings = openings.where("year", Integer.toString(year));
        }
        Names names = desk.names();
        Map<String, Map<String, Integer>> rows = new LinkedHashMap<>();
        Set<String> causes = new TreeSet<>();
        for (Entry opening : desk.list(openings)) {
            String built = opening.text("year");
            desk.book().each(desk.owner(), Search.of(Sheets.get("tally")).where("opening", opening.id()), tally -> {
                String nest = tally.text("nest").isEmpty() ? "" : names.name("nest", tally.text("nest"));
                String house = tally.text("house").isEmpty() ? "" : names.name("house", tally.text("house"));
                String line = String.join(
                        ",",
                        cell(last(house)),
                        cell((last(nest) + " " + tally.text("tunnel")).strip()),
                        cell(kind(desk, tally.text("nest"))),
                        built);
                rows.computeIfAbsent(line, key -> new LinkedHashMap<>())
                        .merge(tally.text("found"), tally.whole("cells").orElse(0), Integer::sum);
                if (!tally.text("found").equals(ALIVE)) {
                    causes.add(tally.text("found"));
                }
            });
        }
        if (rows.isEmpty()) {
            throw new Refusal(
                    Refusal.Kind.NO_ANSWER,
                    "NY-RECORDS-LACK",
                    site.text(Sheet.NAME),
                    "no opened nest of " + species + (year == 0 ? "" : " of " + year)
                            + " is written down there; expected a tally.",
                    "Maybe write it down with nestyear enter tally.");
        }
        return TextSource.ofTexts("tally.csv", Map.of("tally.csv", csv(rows, causes)));
    }

    private static String csv(Map<String, Map<String, Integer>> rows, Set<String> causes) {
        List<String> looked = causes.isEmpty() ? List.of("unknown") : List.copyOf(causes);
        List<String> lines = new ArrayList<>(List.of("house,nest,nest_kind,year,alive," + String.join(",", looked)));
        rows.forEach((line, found) -> {
            StringBuilder row = new StringBuilder(line).append(',').append(found.getOrDefault(ALIVE, 0));
            looked.forEach(cause -> row.append(',').append(found.getOrDefault(cause, 0)));
            lines.add(row.toString());
        });
        return String.join("\n", lines) + "\n";
    }

    private static String kind(BookDesk desk, String nest) {
        return nest.isEmpty()
                ? ""
                : desk.find(Sheets.get("nest"), nest).map(n -> n.text("kind")).orElse("");
    }

    private static String last(String name) {
        return name.substring(name.lastIndexOf(" / ") < 0 ? 0 : name.lastIndexOf(" / ") + " / ".length());
    }

    private static String cell(String text) {
        return "\"" + text.replace("\"", "\"\"") + "\"";
    }
}
