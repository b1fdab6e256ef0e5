package org.nestyear.app.book;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.nestyear.app.service.EitherBee;
import org.nestyear.app.service.Refusal;
import org.nestyear.core.species.Species;
import org.nestyear.records.book.Change;
import org.nestyear.records.book.Entry;
import org.nestyear.records.book.RecordBook;
import org.nestyear.records.book.Search;
import org.nestyear.records.book.Sheet;
import org.nestyear.records.book.Sheets;

/**
 * What an opening makes of a year: next year's batch, the losses and the growth.
 *
 * @param site name of the site
 * @param species Latin name
 * @param year year the nests were built in
 * @param cells cells found
 * @param alive living bees among them
 * @param lost cells lost, by what took them, most first
 * @param femalesOut females put out in that year
 * @param females females of the new batch
 * @param males males of it
 * @param sexesFrom how they are known
 * @param batch name of the new batch
 * @param parents names of the batches they came from
 * @param written whether the batch was written down
 */
public record NextYear(
        String site,
        String species,
        int year,
        int cells,
        int alive,
        Map<String, Integer> lost,
        int femalesOut,
        int females,
        int males,
        String sexesFrom,
        String batch,
        List<String> parents,
        boolean written) {
    private static final String ALIVE = "alive";

    public NextYear {
        lost = Collections.unmodifiableMap(new LinkedHashMap<>(lost));
        parents = List.copyOf(parents);
    }

    /** Growth: females of the new batch for each put out; NaN where none was put out. */
    public double growth() {
        return femalesOut == 0 ? Double.NaN : females / (double) femalesOut;
    }

    /**
     * What is to be made of a year.
     *
     * @param site name of the site
     * @param species Latin name
     * @param year year the nests were built in
     * @param females females counted by the keeper, or −1 to go by the published share
     * @param wintered where the new batch winters, or empty when it is not known yet
     */
    public record Question(String site, String species, int year, int females, String wintered) {}

    /**
     * Reads the year off the records, and writes next year's batch down if asked to.
     *
     * @param write false to look only
     * @throws Refusal if nothing was opened, nothing lives, or the batch is there already
     */
    public static NextYear of(RecordsDesk records, String who, Question question, boolean write) {
        BookDesk desk = records.desk();
        Entry site = KeptSeason.site(desk, question.site());
        Species bee = EitherBee.named(question.species());
        Found found = Found.of(desk, site, bee.latinName(), question.year());
        if (found.alive == 0) {
            throw refusal(
                    site,
                    found.cells == 0
                            ? "no opened nest of " + bee.latinName() + " of " + question.year()
                                    + " is written down there"
                            : "nothing alive was found in the nests of " + question.year(),
                    "an opening with living bees",
                    "Maybe write it down with nestyear enter opening, then nestyear enter tally.");
        }
        if (question.females() > found.alive) {
            throw refusal(
                    site,
                    "--females is " + question.females() + ", but " + found.alive + " bees were found alive",
                    "a number from 0 to " + found.alive,
                    "");
        }
        boolean counted = question.females() >= 0;
        int females = counted ? question.females() : (int) Math.round(found.alive * Sexes.femaleShare(bee));
        String name = site.text(Sheet.NAME) + " " + (question.year() + 1) + " "
                + (EitherBee.isLeafcutter(bee) ? "leafcutter" : "mason");
        List<Entry> parents = flew(desk, site, bee.latinName(), question.year());
        int out = parents.stream()
                .mapToInt(batch -> Sexes.of(desk, batch).females())
                .sum();
        NextYear answer = new NextYear(
                site.text(Sheet.NAME),
                bee.latinName(),
                question.year(),
                found.cells,
                found.alive,
                found.lost(),
                out,
                females,
                found.alive - females,
                counted ? "counted by you" : "by the published share; sex some and correct it",
                name,
                parents.stream().map(batch -> batch.text(Sheet.NAME)).toList(),
                write);
        if (write) {
            write(desk, who, site, answer, counted, question.wintered(), parents);
        }
        return answer;
    }

    private static void write(
            BookDesk desk,
            String who,
            Entry site,
            NextYear answer,
            boolean counted,
            String wintered,
            List<Entry> parents) {
        Sheet batches = Sheets.get("batch");
        Map<String, String> values = new HashMap<>(Map.of(
                "site", site.id(),
                "name", answer.batch(),
                "species", answer.species(),
                "year", Integer.toString(answer.year() + 1),
                "origin", origin(parents),
                "came_by", "own nests",
                "cocoons", Integer.toString(answer.alive()),
                "wintered", wintered));
        if (counted) {
            values.put("females", Integer.toString(answer.females()));
            values.put("males", Integer.toString(answer.males()));
        }
        String id = RecordBook.newId();
        List<Change> changes = new ArrayList<>(List.of(new Change.Add(batches, id, values)));
        for (Entry parent : parents) {
            changes.add(new Change.Add(
                    Sheets.get("parent"), RecordBook.newId(), Map.of("batch", id, "from_batch", parent.id())));
        }
        BookDesk.guarded(() -> desk.book()
                .write(desk.by(who), "made " + answer.batch() + " out of the nests of " + answer.year(), changes));
    }

    private static String origin(List<Entry> parents) {
        List<String> origins =
                parents.stream().map(p -> p.text("origin")).distinct().toList();
        return origins.size() == 1 ? origins.get(0) : origins.isEmpty() ? "local" : "several places";
    }

    private static List<Entry> flew(BookDesk desk, Entry site, String species, int year) {
        return desk
                .list(Search.of(Sheets.get("batch"))
                        .where("site", site.id())
                        .where("species", species)
                        .where("year", Integer.toString(year)))
                .stream()
                .filter(batch -> desk.count(Search.of(Sheets.get("release")).where("batch", batch.id())) > 0)
                .toList();
    }

    private static Refusal refusal(Entry site, String found, String expected, String advice) {
        return new Refusal(
                Refusal.Kind.NO_ANSWER,
                "NY-RECORDS-LACK",
                site.text(Sheet.NAME),
                found + "; expected " + expected + ".",
                advice);
    }

    /** What the openings of a year found. */
    private static final class Found {
        private int cells;
        private int alive;
        private final Map<String, Integer> causes = new HashMap<>();

        static Found of(BookDesk desk, Entry site, String species, int year) {
            Found found = new Found();
            for (Entry opening : desk.list(Search.of(Sheets.get("opening"))
                    .where("site", site.id())
                    .where("species", species)
                    .where("year", Integer.toString(year)))) {
                desk.book()
                        .each(desk.owner(), Search.of(Sheets.get("tally")).where("opening", opening.id()), found::take);
            }
            return found;
        }

        private void take(Entry tally) {
            int number = tally.whole("cells").orElse(0);
            cells += number;
            if (tally.text("found").equals(ALIVE)) {
                alive += number;
            } else {
                causes.merge(tally.text("found"), number, Integer::sum);
            }
        }

        private Map<String, Integer> lost() {
            Map<String, Integer> sorted = new LinkedHashMap<>();
            causes.entrySet().stream()
                    .sorted(Map.Entry.<String, Integer>comparingByValue()
                            .reversed()
                            .thenComparing(Map.Entry.comparingByKey()))
                    .forEach(cause -> sorted.put(cause.getKey(), cause.getValue()));
            return sorted;
        }
    }
}
