package org.nestyear.app.book;

import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import javax.sql.DataSource;
import org.nestyear.app.service.EitherBee;
import org.nestyear.app.service.RecordsHome;
import org.nestyear.app.service.Refusal;
import org.nestyear.app.service.Spelling;
import org.nestyear.core.species.Species;
import org.nestyear.records.book.Act;
import org.nestyear.records.book.BadEntryException;
import org.nestyear.records.book.By;
import org.nestyear.records.book.Change;
import org.nestyear.records.book.ChangedSinceException;
import org.nestyear.records.book.ColumnKind;
import org.nestyear.records.book.Correction;
import org.nestyear.records.book.Entry;
import org.nestyear.records.book.EntryCheck;
import org.nestyear.records.book.FeedLinks;
import org.nestyear.records.book.RecordBook;
import org.nestyear.records.book.Search;
import org.nestyear.records.book.Sheet;
import org.nestyear.records.book.Sheets;
import org.nestyear.records.book.WholeAccount;

/** Where a keeper writes down, corrects and takes back, by the names things have. Safe for many threads. */
public final class BookDesk {
    private static final int SHORTEST_ID = 4;
    private static final String OWNER = "keeper";

    private final DataSource source;
    private final Clock clock;
    private final RecordBook book;
    private final String owner;

    private BookDesk(DataSource source, Clock clock, RecordBook book, String owner) {
        this.source = source;
        this.clock = clock;
        this.book = book;
        this.owner = owner;
    }

    /**
     * The desk with the records of a folder that exists.
     *
     * @throws Refusal if the records cannot be opened
     */
    public static BookDesk at(Path folder, Clock clock) {
        return of(RecordsHome.in(folder).open(), clock);
    }

    /** The desk with the records of an open database. */
    public static BookDesk of(DataSource source, Clock clock) {
        EntryCheck check = new EntryCheck(
                EitherBee.all().stream().map(Species::latinName).collect(Collectors.toUnmodifiableSet()));
        return new BookDesk(source, clock, new RecordBook(source, clock, check), OWNER);
    }

    /** The day it is. */
    public LocalDate today() {
        return LocalDate.now(clock);
    }

    /** The whole account, to carry it elsewhere and back. */
    public AccountArchive archive() {
        return new AccountArchive(source, clock, owner);
    }

    /** Keeps the bytes of a picture. */
    void putPicture(String sha256, byte[] bytes) {
        WholeAccount account = new WholeAccount(source, clock);
        account.together(() -> {
            account.putPicture(owner, sha256, bytes);
            return sha256;
        });
    }

    /** The secret links to the calendar. */
    FeedLinks feeds() {
        return new FeedLinks(source, clock);
    }

    RecordBook book() {
        return book;
    }

    ZoneId zone() {
        return clock.getZone();
    }

    String owner() {
        return owner;
    }

    By by(String who) {
        return new By(owner, who);
    }

    Names names() {
        return new Names(book, owner);
    }

    /**
     * The table of this name.
     *
     * @throws Refusal if there is none
     */
    public static Sheet sheet(String name) {
        return Sheets.find(name).orElseThrow(() -> {
            List<String> known = Sheets.list().stream().map(Sheet::name).toList();
            return Refusal.usage(
                    "\"" + name + "\" is no table of the records; expected one of " + String.join(", ", known) + ".",
                    Spelling.advice(name, known));
        });
    }

    /**
     * Writes a new entry down.
     *
     * @param id made by the face, so that sending it twice makes one
     * @param typed what it tells, by column, with names in place of ids
     * @throws Refusal if it cannot stand so
     */
    public Entry add(String who, Sheet sheet, String id, Map<String, String> typed) {
        return guarded(() -> {
            Map<String, String> values = Typed.values(sheet, typed, names());
            book.write(by(who), words("wrote", sheet), List.of(new Change.Add(sheet, id, values)));
            return entry(sheet, id);
        });
    }

    /**
     * Writes other values over an entry; the old ones are kept.
     *
     * @param revision the revision the writer saw
     * @param typed all it shall tell from now on
     * @throws Refusal if it cannot stand so, or somebody changed it meanwhile
     */
    public Entry correct(String who, Sheet sheet, String id, int revision, Map<String, String> typed) {
        return guarded(() -> {
            Map<String, String> values = Typed.values(sheet, typed, names());
            book.write(by(who), words("corrected", sheet), List.of(new Change.Correct(sheet, id, revision, values)));
            return entry(sheet, id);
        });
    }

    /**
     * Takes an entry out; it can be brought back.
     *
     * @throws Refusal if others link to it, or somebody changed it meanwhile
     */
    public void remove(String who, Sheet sheet, String id, int revision) {
        guarded(() -> book.write(by(who), words("took out", sheet), List.of(new Change.Remove(sheet, id, revision))));
    }

    /**
     * Takes the newest act back.
     *
     * @throws Refusal if there is none, or it cannot be taken back any more
     */
    public Act undo(String who) {
        return guarded(() -> book.undo(
                by(who),
                book.findLast(owner)
                        .orElseThrow(() -> new Refusal(
                                Refusal.Kind.NO_ANSWER,
                                "NY-UNDO",
                                "",
                                "there is nothing to take back; expected an entry made before.",
                                ""))
                        .id()));
    }

    /**
     * Takes this act back; if it took another back, that one is done again.
     *
     * @throws Refusal if it cannot be taken back any more
     */
    public Act undo(String who, String actId) {
        return guarded(() -> book.undo(by(who), actId));
    }

    /**
     * The entry whose id begins so.
     *
     * @param start at least four characters
     * @throws Refusal if there is none, or more than one
     */
    public Entry entryBy(Sheet sheet, String start) {
        List<Entry> found = start.length() < SHORTEST_ID
                ? List.of()
                : find(sheet, start)
                        .map(List::of)
                        .orElseGet(() -> list(Search.of(sheet)).stream()
                                .filter(entry -> entry.id().startsWith(start))
                                .toList());
        if (found.size() != 1) {
            throw Refusal.usage(
                    (found.isEmpty() ? "no entry" : "more than one entry") + " under " + sheet.title()
                            + " has an id that begins with \"" + start
                            + "\"; expected four characters or more of one id.",
                    "Maybe see nestyear entries " + sheet.name() + ".");
        }
        return found.get(0);
    }

    /** What was done, newest first. */
    public List<Act> listActs(int most) {
        return book.listActs(owner, most);
    }

    /** An entry by its id, also one that was taken out. */
    public Optional<Entry> find(Sheet sheet, String id) {
        return book.find(owner, sheet, id);
    }

    /** The entries asked for. */
    public List<Entry> list(Search search) {
        return book.list(owner, search);
    }

    /** How many entries there are. */
    public int count(Search search) {
        return book.count(owner, search);
    }

    /** Every value of an entry that was replaced, newest first. */
    public List<Correction> listCorrections(Sheet sheet, String id) {
        return book.listCorrections(owner, sheet, id);
    }

    /** What can be linked to in a table: ids with their full names. */
    public List<Map.Entry<String, String>> choices(String sheet) {
        return names().list(sheet);
    }

    /** The values of entries as a person reads them: names in place of ids. */
    public List<Map<String, String>> shown(List<Entry> entries) {
        Names names = names();
        List<Map<String, String>> rows = new ArrayList<>();
        for (Entry entry : entries) {
            rows.add(shown(entry, names));
        }
        return rows;
    }

    static Map<String, String> shown(Entry entry, Names names) {
        Map<String, String> row = new LinkedHashMap<>();
        entry.sheet().columns().forEach(column -> {
            String value = entry.text(column.name());
            if (!value.isEmpty()) {
                row.put(
                        column.name(),
                        column.kind() == ColumnKind.LINK ? names.uniqueName(column.linkTo(), value) : value);
            }
        });
        return row;
    }

    private Entry entry(Sheet sheet, String id) {
        return find(sheet, id).orElseThrow();
    }

    private static String words(String did, Sheet sheet) {
        return did + " under " + sheet.title();
    }

    /** Runs a piece of work; what the records refuse becomes a sentence for the keeper. */
    static <T> T guarded(Work<T> work) {
        try {
            return work.run();
        } catch (Typed.Misunderstood e) {
            throw new Refusal(
                    Refusal.Kind.BAD_INPUT,
                    "NY-ENTRY",
                    "",
                    e.getMessage() + ".",
                    e.advice().isEmpty() ? "" : "Maybe " + e.advice() + ".");
        } catch (BadEntryException e) {
            throw new Refusal(Refusal.Kind.BAD_INPUT, "NY-ENTRY", "", e.getMessage() + ".", "");
        } catch (ChangedSinceException e) {
            throw new Refusal(Refusal.Kind.BAD_INPUT, "NY-CHANGED", "", e.getMessage() + ".", "");
        }
    }

    /** Something that may be refused. */
    @FunctionalInterface
    interface Work<T> {
        T run();
    }
}
