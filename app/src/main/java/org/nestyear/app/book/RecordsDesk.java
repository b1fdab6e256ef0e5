package org.nestyear.app.book;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.StringWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Clock;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import org.nestyear.app.service.RecordsHome;
import org.nestyear.app.service.Refusal;
import org.nestyear.data.TextSource;
import org.nestyear.records.book.Act;
import org.nestyear.records.book.Entry;
import org.nestyear.records.book.RecordBook;
import org.nestyear.records.book.Search;
import org.nestyear.records.book.Sheet;

/** What every face asks of the records, in words: tables and columns by name, entries as a person reads them. */
public final class RecordsDesk {
    private static final int SHORTEST_ID = 4;
    private static final int ACTS_SEARCHED = 10_000;

    private final BookDesk desk;

    public RecordsDesk(BookDesk desk) {
        this.desk = desk;
    }

    /**
     * The records of a folder that exists.
     *
     * @throws Refusal if they cannot be opened
     */
    public static RecordsDesk at(Path folder, Clock clock) {
        return at(RecordsHome.in(folder), clock);
    }

    /**
     * The records wherever they are.
     *
     * @throws Refusal if they cannot be opened
     */
    public static RecordsDesk at(RecordsHome home, Clock clock) {
        return new RecordsDesk(BookDesk.of(home.open(), clock));
    }

    /** The same records for work that goes beyond single entries. */
    public BookDesk desk() {
        return desk;
    }

    /** An id for a new entry, made before it is sent, so that sending it twice makes one. */
    public static String newId() {
        return RecordBook.newId();
    }

    /**
     * Writes an entry down.
     *
     * @throws Refusal if it cannot stand so
     */
    public ShownEntry add(String who, String table, String id, Map<String, String> typed) {
        return shown(desk.add(who, BookDesk.sheet(table), id, typed));
    }

    /**
     * Writes other values into some columns; the others stay, and the old ones are kept.
     *
     * @param idStart the first characters of its id
     * @param changes new values by column; empty text takes a value away
     * @throws Refusal if it cannot stand so
     */
    public ShownEntry correct(String who, String table, String idStart, Map<String, String> changes) {
        Entry entry = desk.entryBy(BookDesk.sheet(table), idStart);
        Map<String, String> values = new LinkedHashMap<>(entry.values());
        values.putAll(changes);
        return shown(desk.correct(who, entry.sheet(), entry.id(), entry.revision(), values));
    }

    /**
     * Writes all values of an entry anew, if nobody changed it since it was seen.
     *
     * @param revision the revision that was seen
     * @throws Refusal if it cannot stand so, or was changed
     */
    public ShownEntry rewrite(String who, String table, String id, int revision, Map<String, String> typed) {
        return shown(desk.correct(who, BookDesk.sheet(table), id, revision, typed));
    }

    /**
     * Takes an entry out.
     *
     * @throws Refusal if others belong to it
     */
    public ShownEntry remove(String who, String table, String idStart) {
        Entry entry = desk.entryBy(BookDesk.sheet(table), idStart);
        desk.remove(who, entry.sheet(), entry.id(), entry.revision());
        return shown(desk.find(entry.sheet(), entry.id()).orElseThrow());
    }

    /**
     * Takes the newest act back, or the one whose id begins so.
     *
     * @return the act that did it
     * @throws Refusal if it cannot be taken back
     */
    public DoneAct undo(String who, Optional<String> idStart) {
        if (idStart.isEmpty()) {
            return DoneAct.of(desk.undo(who));
        }
        List<Act> found = idStart.get().length() < SHORTEST_ID
                ? List.of()
                : desk.listActs(ACTS_SEARCHED).stream()
                        .filter(act -> act.id().startsWith(idStart.get()))
                        .toList();
        if (found.size() != 1) {
            throw Refusal.usage(
                    (found.isEmpty() ? "nothing" : "more than one thing") + " done has an id that begins with \""
                            + idStart.get() + "\"; expected four characters or more of one id.",
                    "Maybe see nestyear done.");
        }
        return DoneAct.of(desk.undo(who, found.get(0).id()));
    }

    /** What was done, newest first. */
    public List<DoneAct> done(int most) {
        return desk.listActs(most).stream().map(DoneAct::of).toList();
    }

    /** One entry with its history, also when it was taken out. */
    public ShownEntry show(String table, String idStart) {
        return shown(desk.entryBy(BookDesk.sheet(table), idStart));
    }

    /** The entries asked for, newest first, without their histories. */
    public List<ShownEntry> list(EntriesQuestion question) {
        Names names = desk.names();
        return desk.list(search(question, names).newest(question.most(), question.skip())).stream()
                .map(entry -> ShownEntry.of(entry, names, List.of()))
                .toList();
    }

    /** How many there are of those asked for. */
    public int count(EntriesQuestion question) {
        return desk.count(search(question, desk.names()));
    }

    private static Search search(EntriesQuestion question, Names names) {
        Sheet sheet = BookDesk.sheet(question.table());
        Search search = Search.of(sheet);
        if (!question.site().isEmpty()) {
            if (sheet.column("site").isEmpty()) {
                throw Refusal.usage(
                        "entries under " + sheet.title() + " name no site of their own; expected no site.", "");
            }
            Map<String, String> site =
                    BookDesk.guarded(() -> Typed.values(sheet, Map.of("site", question.site()), names));
            search = search.where("site", site.getOrDefault("site", ""));
        }
        if (question.year() != 0) {
            if (search.dateColumn() == null) {
                throw Refusal.usage("entries under " + sheet.title() + " have no day; expected no year.", "");
            }
            search = search.between(question.year() + "-01-01", question.year() + "-12-31");
        }
        return search;
    }

    /** What can be linked to in a table: full names by id. */
    public Map<String, String> choices(String table) {
        Map<String, String> choices = new LinkedHashMap<>();
        desk.choices(table).forEach(choice -> choices.put(choice.getKey(), choice.getValue()));
        return choices;
    }

    /**
     * What reading a CSV file would change.
     *
     * @throws Refusal the first thing that is wrong, with its line
     */
    public ImportPlan planImport(String table, TextSource file) {
        return new SheetFiles(desk).plan(BookDesk.sheet(table), file);
    }

    /**
     * The same for a file on this computer.
     *
     * @throws Refusal the first thing that is wrong, with its line
     */
    public ImportPlan planImport(String table, Path file) {
        return planImport(table, TextSource.ofFile(file));
    }

    /**
     * The same for a text held in memory.
     *
     * @param name name of the file, for messages
     * @throws Refusal the first thing that is wrong, with its line
     */
    public ImportPlan planImport(String table, String name, String text) {
        return planImport(table, TextSource.ofTexts(name, Map.of(name, text)));
    }

    /** Writes what was planned under an act id made before, so that sending it twice does it once. */
    public Optional<DoneAct> apply(String who, String act, ImportPlan plan) {
        return new SheetFiles(desk).apply(who, act, plan).map(DoneAct::of);
    }

    /** Writes what was planned; empty if there was nothing to change. */
    public Optional<DoneAct> apply(String who, ImportPlan plan) {
        return new SheetFiles(desk).apply(who, plan).map(DoneAct::of);
    }

    /** A table as CSV. */
    public String csv(String table) {
        StringWriter text = new StringWriter();
        new SheetFiles(desk).write(BookDesk.sheet(table), text);
        return text.toString();
    }

    /**
     * Writes a table as a CSV file.
     *
     * @return how many entries
     * @throws Refusal if something of that name is there, or it cannot be written
     */
    public int writeCsv(String table, Path file) {
        Sheet sheet = BookDesk.sheet(table);
        return toFile(file, out -> {
            Writer text = new OutputStreamWriter(out, StandardCharsets.UTF_8);
            int rows = new SheetFiles(desk).write(sheet, text);
            text.flush();
            return rows;
        });
    }

    /**
     * Writes the whole account as an archive.
     *
     * @throws Refusal if something of that name is there, or it cannot be written
     */
    public AccountArchive.Contents writeArchive(Path file, Consumer<String> progress) {
        return toFile(file, out -> desk.archive().write(out, progress));
    }

    /**
     * Reads an archive into the account, or only looks at it.
     *
     * @throws Refusal if it is none, is damaged, or tells something else than the account
     */
    public AccountArchive.Contents readArchive(Path file, boolean write, Consumer<String> progress) {
        return desk.archive().read(file, write, progress);
    }

    /** What goes into a file. */
    @FunctionalInterface
    interface Content<T> {
        T writeTo(OutputStream out) throws IOException;
    }

    /** Writes a file under another name first, so that a half-written one is never taken for a whole one. */
    static <T> T toFile(Path file, Content<T> content) {
        if (Files.exists(file)) {
            throw refusal(
                    file, "something of that name is there already, and nothing is overwritten; expected a new name.");
        }
        Path whole = file.toAbsolutePath();
        Path part = whole.resolveSibling(whole.getFileName() + ".part");
        try {
            try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(part))) {
                T answer = content.writeTo(out);
                out.flush();
                Files.move(part, whole, StandardCopyOption.ATOMIC_MOVE);
                return answer;
            } finally {
                Files.deleteIfExists(part);
            }
        } catch (IOException e) {
            throw refusal(file, "the file cannot be written; expected a place you may write to.");
        }
    }

    private static Refusal refusal(Path file, String sentence) {
        return new Refusal(Refusal.Kind.BAD_INPUT, "NY-FILE-EXISTS", file.toString(), sentence, "");
    }

    private ShownEntry shown(Entry entry) {
        return ShownEntry.of(entry, desk.names(), new ArrayList<>(desk.listCorrections(entry.sheet(), entry.id())));
    }
}
