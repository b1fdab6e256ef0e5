package org.nestyear.app.book;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.nestyear.app.service.Refusal;
import org.nestyear.core.losses.Cause;
import org.nestyear.records.book.Act;
import org.nestyear.records.book.BadEntryException;
import org.nestyear.records.book.Change;
import org.nestyear.records.book.ChangedSinceException;
import org.nestyear.records.book.Entry;
import org.nestyear.records.book.Search;
import org.nestyear.records.book.Sheet;
import org.nestyear.records.book.Sheets;

/** Counting cells at an opening, one tap an act. Two people who tap at once both count. */
public final class TallyDesk {
    private static final String ALIVE = "alive";
    private static final String WORDS = "tally: ";
    private static final String ONE_MORE = "one more ";
    // Each round somebody else was quicker; so many in a row mean that something else is wrong.
    private static final int MOST_TRIES = 50;
    private static final int OPENINGS = 30;

    private final BookDesk desk;

    /** Counting in these records. */
    public TallyDesk(BookDesk desk) {
        this.desk = desk;
    }

    /**
     * An opening.
     *
     * @param words its day, place and bee
     * @param site name of its site
     */
    public record Opening(String id, String words, String site) {}

    /**
     * Where the opened cells lie.
     *
     * @param house full name of the house, or empty
     * @param nest full name of the nest, or empty
     * @param tunnel name of the tunnel or block, or empty
     */
    public record Spot(String house, String nest, String tunnel) {}

    /**
     * How many cells of one sort were found.
     *
     * @param found the word for it in the table
     * @param label as it reads on a button
     * @param here at the spot
     * @param all in the whole opening
     */
    public record Count(String found, String label, int here, int all) {}

    /** What was found in an opening so far, alive first. */
    public record Board(List<Count> counts) {
        public Board {
            counts = List.copyOf(counts);
        }

        /** Cells found alive. */
        public int alive() {
            return counts.get(0).all();
        }

        /** Cells lost to whatever cause. */
        public int lost() {
            return counts.stream().mapToInt(Count::all).sum() - alive();
        }
    }

    /**
     * The newest openings.
     *
     * @param site name of a site, or empty for all
     */
    public List<Opening> openings(String site) {
        Names names = desk.names();
        Search search = Search.of(Sheets.get("opening"));
        if (!site.isEmpty()) {
            search = search.where("site", names.find("site", site).orElse(site));
        }
        return desk.list(search.newest(OPENINGS, 0)).stream()
                .map(entry -> opening(entry, names))
                .toList();
    }

    /** An opening by its id, if it is there. */
    public Optional<Opening> find(String id) {
        return desk.find(Sheets.get("opening"), id)
                .filter(entry -> !entry.removed())
                .map(entry -> opening(entry, desk.names()));
    }

    private static Opening opening(Entry entry, Names names) {
        String site = names.uniqueName("site", entry.text("site"));
        String words = EntryDesk.commonName(entry.text("species")) + ", nests of " + entry.text("year") + ", "
                + names.name("site", entry.text("site")) + ", opened " + entry.text("on_date");
        return new Opening(entry.id(), words, site);
    }

    /**
     * The counts of an opening, at a spot and in all.
     *
     * @throws Refusal if there is no such house or nest
     */
    public Board board(String opening, Spot spot) {
        Map<String, String> at = BookDesk.guarded(() -> values(opening, spot));
        Map<String, Integer> here = new LinkedHashMap<>();
        Map<String, Integer> all = new LinkedHashMap<>();
        for (Entry row : rows(opening)) {
            int cells = row.whole("cells").orElse(0);
            all.merge(row.text("found"), cells, Integer::sum);
            if (row.text("house").equals(at.getOrDefault("house", ""))
                    && row.text("nest").equals(at.getOrDefault("nest", ""))
                    && row.text("tunnel").equals(at.getOrDefault("tunnel", ""))) {
                here.merge(row.text("found"), cells, Integer::sum);
            }
        }
        List<Count> counts = new ArrayList<>();
        counts.add(new Count(ALIVE, ALIVE, here.getOrDefault(ALIVE, 0), all.getOrDefault(ALIVE, 0)));
        for (Cause cause : Cause.values()) {
            counts.add(new Count(
                    cause.word(),
                    cause.label(),
                    here.getOrDefault(cause.word(), 0),
                    all.getOrDefault(cause.word(), 0)));
        }
        return new Board(counts);
    }

    private List<Entry> rows(String opening) {
        return desk.list(Search.of(Sheets.get("tally")).where("opening", opening));
    }

    /**
     * Counts one cell more, or one less.
     *
     * @param tap made by the face for this tap, so that sending it twice counts it once
     * @param step +1 or −1
     * @return what was done; empty if there was nothing to take away
     * @throws Refusal if there is no such opening, spot or sort
     */
    public Optional<DoneAct> tap(String who, String opening, Spot spot, String found, int step, String tap) {
        String act = UUID.nameUUIDFromBytes((tap + found + step).getBytes(StandardCharsets.UTF_8))
                .toString();
        if (find(opening).isEmpty()) {
            throw new Refusal(
                    Refusal.Kind.BAD_INPUT, "NY-ENTRY", "", "there is no such opening; expected one begun before.", "");
        }
        Map<String, String> values = BookDesk.guarded(() -> {
            Map<String, String> typed = values(opening, spot);
            typed.put("found", found);
            typed.put("cells", "1");
            return desk.book()
                    .check()
                    .plain(Sheets.get("tally"), typed, desk.book().now(), 0);
        });
        String words = WORDS + (step > 0 ? ONE_MORE : "one less ") + label(found) + where(spot);
        int tries = 0;
        while (tries < MOST_TRIES) {
            Optional<Change> change = change(values, step);
            if (change.isEmpty()) {
                return Optional.empty();
            }
            try {
                Optional<Act> done = desk.book().write(desk.by(who), act, words, List.of(change.get()));
                if (done.isPresent()) {
                    return done.map(DoneAct::of);
                }
                // Nothing written: somebody else made the very same first tap in between, and ours is the second.
                tries++;
            } catch (ChangedSinceException | BadEntryException e) {
                // Somebody tapped between the look and the write: look again.
                tries++;
            }
        }
        throw new Refusal(
                Refusal.Kind.BAD_INPUT,
                "NY-CHANGED",
                "",
                "the count was changed by others again and again; expected a moment of quiet.",
                "Maybe tap once more.");
    }

    private Map<String, String> values(String opening, Spot spot) {
        Map<String, String> typed = new LinkedHashMap<>();
        typed.put("house", spot.house());
        typed.put("nest", spot.nest());
        typed.put("tunnel", spot.tunnel().strip());
        Map<String, String> values = Typed.values(Sheets.get("tally"), typed, desk.names());
        values.put("opening", opening);
        return values;
    }

    private Optional<Change> change(Map<String, String> values, int step) {
        Sheet sheet = Sheets.get("tally");
        Search same = Search.of(sheet);
        for (String column : sheet.key()) {
            same = same.where(column, values.getOrDefault(column, ""));
        }
        List<Entry> there = desk.list(same);
        if (there.isEmpty()) {
            return step < 0 ? Optional.empty() : Optional.of(new Change.Add(sheet, freeId(sheet, values), values));
        }
        Entry row = there.get(0);
        int cells = row.whole("cells").orElse(0) + step;
        if (cells < 0) {
            return Optional.empty();
        }
        Map<String, String> next = new LinkedHashMap<>(row.values());
        next.put("cells", Integer.toString(cells));
        return Optional.of(new Change.Correct(sheet, row.id(), row.revision(), next));
    }

    // The same first tap of two people gets the same id, so that they cannot make two rows of one sort.
    private String freeId(Sheet sheet, Map<String, String> values) {
        String identity = sheet.identity(values);
        int round = 0;
        String id;
        do {
            id = UUID.nameUUIDFromBytes((identity + round).getBytes(StandardCharsets.UTF_8))
                    .toString();
            round++;
        } while (desk.find(sheet, id).map(Entry::removed).orElse(false));
        return id;
    }

    private static String label(String found) {
        return Arrays.stream(Cause.values())
                .filter(cause -> cause.word().equals(found))
                .map(Cause::label)
                .findFirst()
                .orElse(found);
    }

    private static String where(Spot spot) {
        String place = spot.nest().isEmpty() ? spot.house() : spot.nest();
        String tunnel = spot.tunnel().isBlank() ? "" : "tunnel " + spot.tunnel().strip();
        String both = place + (place.isEmpty() || tunnel.isEmpty() ? "" : ", ") + tunnel;
        return both.isEmpty() ? "" : " (" + both + ")";
    }

    /** The newest tap of a person at an opening that still counts. */
    public Optional<DoneAct> lastTap(String who, String opening) {
        return rows(opening).stream()
                .map(Entry::act)
                .distinct()
                .map(act -> desk.book().findAct(desk.owner(), act))
                .flatMap(Optional::stream)
                .filter(act ->
                        act.who().equals(who) && act.words().startsWith(WORDS + ONE_MORE) && act.undoneBy() == null)
                .max(Comparator.comparing(Act::at))
                .map(DoneAct::of);
    }
}
