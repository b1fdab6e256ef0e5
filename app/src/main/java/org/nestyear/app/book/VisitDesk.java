package org.nestyear.app.book;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.nestyear.app.book.EntryDesk.Choice;
import org.nestyear.app.book.SaveAnswer.RowFault;
import org.nestyear.records.book.Entry;
import org.nestyear.records.book.Search;
import org.nestyear.records.book.Sheet;
import org.nestyear.records.book.Sheets;

/** The quick visit: a count, the mud, what was seen, in one act, with the season's running total. */
public final class VisitDesk {
    private static final String STEP = " / ";

    private final BookDesk desk;
    private final EntryDesk entries;

    /** Visits in these records. */
    public VisitDesk(BookDesk desk) {
        this.desk = desk;
        this.entries = new EntryDesk(desk);
    }

    /**
     * A site.
     *
     * @param id made by the program
     * @param value what a form sends for it
     * @param name its name
     * @param zone its time zone
     */
    public record Site(String id, String value, String name, String zone) {}

    /** The sites, in the order they were written. */
    public List<Site> sites() {
        Names names = desk.names();
        return desk.list(Search.of(Sheets.get("site"))).stream()
                .map(site ->
                        new Site(site.id(), names.uniqueName("site", site.id()), site.text("name"), site.text("zone")))
                .toList();
    }

    /** The houses of a site: what a form sends, and their own names. */
    public List<Choice> houses(Site site) {
        Names names = desk.names();
        return desk.list(Search.of(Sheets.get("house")).where("site", site.id())).stream()
                .map(house -> new Choice(names.uniqueName("house", house.id()), house.text("name")))
                .toList();
    }

    /** The last visit to each of some sites, by the site's id, where there was one. */
    public Map<String, ShownEntry> last(List<Site> sites) {
        Names names = desk.names();
        Map<String, ShownEntry> last = new LinkedHashMap<>();
        for (Site site : sites) {
            desk.list(Search.of(Sheets.get("visit")).where("site", site.id()).newest(1, 0))
                    .forEach(entry -> last.put(site.id(), ShownEntry.of(entry, names, List.of())));
        }
        return last;
    }

    /** What can be seen. */
    public static List<String> sightingWords() {
        return Sheets.get("sighting").column("what").orElseThrow().words();
    }

    /**
     * What a line of plain words was understood to tell.
     *
     * @param typed the visit with it
     * @param understood one phrase for each thing
     * @param note what was not understood and stands in the note now; empty where all was
     */
    public record Understood(VisitTyped typed, List<String> understood, String note) {
        public Understood {
            understood = List.copyOf(understood);
        }
    }

    /** Reads a line of plain words into a visit; nothing is written and no word is lost. */
    public static Understood understand(VisitTyped before, String line) {
        VisitWords.Reading reading = VisitWords.read(before, line, sightingWords());
        return new Understood(reading.typed(), reading.understood(), reading.note());
    }

    /**
     * Writes a visit and its sightings as one act.
     *
     * @param act made before the form was sent, so that sending it twice makes one visit
     */
    public SaveAnswer save(String who, String act, VisitTyped visit) {
        Map<String, String> counted = new LinkedHashMap<>();
        counted.put("more_plugged", visit.more());
        counted.put("all_plugged", visit.all());
        counted.put("torch_count", visit.torch());
        counted.put("mud", visit.mud());
        counted.put("note", visit.note());
        counted.values().removeIf(String::isBlank);
        Map<String, List<TypedRow>> rows = new LinkedHashMap<>();
        if (!counted.isEmpty()) {
            counted.putAll(place(visit));
            counted.put("house", visit.house());
            rows.put("visit", List.of(new TypedRow(idOf(act, "visit"), 0, counted)));
        }
        List<TypedRow> seen = new ArrayList<>();
        for (String what : visit.sightings()) {
            Map<String, String> sighting = new LinkedHashMap<>(place(visit));
            sighting.put("what", what);
            seen.add(new TypedRow(idOf(act, what), 0, sighting));
        }
        if (!seen.isEmpty()) {
            rows.put("sighting", seen);
        }
        if (rows.isEmpty()) {
            return new SaveAnswer(
                    Optional.empty(),
                    List.of(new RowFault(
                            0, "", "Nothing was told; expected a count, the mud, something seen or a note.")),
                    List.of());
        }
        return entries.save(who, act, words(visit), rows);
    }

    private static Map<String, String> place(VisitTyped visit) {
        return new LinkedHashMap<>(Map.of("site", visit.site(), "species", visit.species(), "on_date", visit.day()));
    }

    // The words of the list of what was done: the counts, so that an undo there is no guess.
    private static String words(VisitTyped visit) {
        List<String> told = told(visit.more(), visit.all(), visit.torch(), visit.mud());
        told.addAll(visit.sightings());
        if (told.isEmpty()) {
            told.add("a note");
        }
        return "visit to " + (visit.house().contains(STEP) ? visit.house() : visit.site()) + ": "
                + String.join(", ", told);
    }

    private static List<String> told(String more, String all, String torch, String mud) {
        List<String> told = new ArrayList<>();
        if (!more.isBlank()) {
            told.add(more + " more plugged");
        }
        if (!all.isBlank()) {
            told.add(all + " plugged in all");
        }
        if (!torch.isBlank()) {
            told.add("torch " + torch);
        }
        if (!mud.isBlank()) {
            told.add("mud " + mud);
        }
        return told;
    }

    private static String idOf(String act, String part) {
        return UUID.nameUUIDFromBytes((act + part).getBytes(StandardCharsets.UTF_8))
                .toString();
    }

    /**
     * What was saved, said back.
     *
     * @param sentence the counts and the season's running total
     * @param act what was done, for its undo
     */
    public record Receipt(String sentence, DoneAct act) {}

    /** What a visit told and how many are plugged in all this season; empty if there is no such act. */
    public Optional<Receipt> receipt(String act) {
        return entries.findAct(act).map(done -> {
            Optional<Entry> visit = desk.find(Sheets.get("visit"), idOf(act, "visit"));
            return new Receipt(visit.map(this::sentence).orElse("Noted: " + done.words() + "."), done);
        });
    }

    private String sentence(Entry visit) {
        List<String> told = told(
                visit.text("more_plugged"), visit.text("all_plugged"), visit.text("torch_count"), visit.text("mud"));
        String where = visit.text("house").isEmpty()
                ? desk.names().name("site", visit.text("site"))
                : desk.names().name("house", visit.text("house"));
        String bee = visit.text("species").isEmpty() ? "" : ", " + EntryDesk.commonName(visit.text("species"));
        if (visit.text("more_plugged").isEmpty()) {
            return (told.isEmpty() ? "Note kept" : String.join(", ", told)) + " (" + where + bee + ").";
        }
        told.add(1, plugged(visit) + " in all this season");
        return String.join(", ", told) + " (" + where + bee + ").";
    }

    /** How many are plugged this season, by the visits to the same house, or site, and the same bee. */
    private int plugged(Entry visit) {
        Sheet sheet = visit.sheet();
        int year = LocalDate.parse(visit.text("on_date")).getYear();
        Search same = Search.of(sheet)
                .where("site", visit.text("site"))
                .where("house", visit.text("house"))
                .where("species", visit.text("species"))
                .between(year + "-01-01", year + "-12-31");
        List<Entry> visits = new ArrayList<>(desk.list(same));
        // Visits of one day stay in the order they were written.
        visits.sort(Comparator.comparing(entry -> entry.text("on_date")));
        int plugged = 0;
        for (Entry entry : visits) {
            // A count of all stands for everything before it.
            plugged = entry.whole("all_plugged")
                    .orElse(plugged + entry.whole("more_plugged").orElse(0));
        }
        return plugged;
    }
}
