package org.nestyear.app.book;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.nestyear.app.book.SaveAnswer.ChangedRow;
import org.nestyear.app.book.SaveAnswer.RowFault;
import org.nestyear.app.service.EitherBee;
import org.nestyear.records.book.BadEntryException;
import org.nestyear.records.book.Change;
import org.nestyear.records.book.ChangedSinceException;
import org.nestyear.records.book.Entry;
import org.nestyear.records.book.Search;
import org.nestyear.records.book.Sheet;
import org.nestyear.records.book.Sheets;

/** Writes what was typed into forms, all rows together, and says what is wrong at each cell. Safe for many threads. */
public final class EntryDesk {
    private final BookDesk desk;

    /** Forms over these records. */
    public EntryDesk(BookDesk desk) {
        this.desk = desk;
    }

    /** Every table as a form, those that others belong to first. */
    public static List<EntryForm> forms() {
        return Sheets.list().stream().map(EntryForm::of).toList();
    }

    /**
     * A table as a form.
     *
     * @throws org.nestyear.app.service.Refusal if there is none of this name
     */
    public static EntryForm form(String table) {
        return EntryForm.of(BookDesk.sheet(table));
    }

    /** What may be chosen: the value to send, and how it reads. */
    public record Choice(String value, String words) {}

    /**
     * The entries of a table that may be linked to.
     *
     * @param most none are given where there are more
     */
    public List<Choice> choices(String table, int most) {
        if (desk.count(Search.of(BookDesk.sheet(table))) > most) {
            return List.of();
        }
        Names names = desk.names();
        return names.list(table).stream()
                .map(entry -> new Choice(names.uniqueName(table, entry.getKey()), entry.getValue()))
                .toList();
    }

    /** The bees of the catalogue, by common name with the Latin name beside it. */
    public static List<Choice> bees() {
        return EitherBee.all().stream()
                .map(bee -> new Choice(bee.latinName(), bee.commonName() + " (" + bee.latinName() + ")"))
                .toList();
    }

    /** What a bee is called in a sentence, by its Latin name. */
    static String commonName(String latinName) {
        return EitherBee.all().stream()
                .filter(bee -> bee.latinName().equals(latinName))
                .map(bee -> bee.commonName())
                .findFirst()
                .orElse(latinName);
    }

    /**
     * What day it is at a place now.
     *
     * @param zone name of its time zone; one that is not known counts as the computer's
     */
    public LocalDate today(String zone) {
        ZoneId there;
        try {
            there = ZoneId.of(zone);
        } catch (DateTimeException e) {
            there = desk.zone();
        }
        return desk.book().now().atZone(there).toLocalDate();
    }

    /** An entry by its whole id, also one that was taken out. */
    public Optional<ShownEntry> find(String table, String id) {
        Sheet sheet = BookDesk.sheet(table);
        return desk.find(sheet, id)
                .map(entry -> ShownEntry.of(entry, desk.names(), desk.listCorrections(sheet, entry.id())));
    }

    /**
     * Entries of a table.
     *
     * @param parent name of what they belong to, or empty for all
     * @param year their year, or 0 for all
     * @param most how many at most
     * @param skip how many to pass over first
     */
    public Found list(String table, String parent, int year, int most, int skip) {
        Sheet sheet = BookDesk.sheet(table);
        Names names = desk.names();
        Search search = Search.of(sheet);
        Optional<EntryForm.Field> above = EntryForm.of(sheet).parent();
        if (!parent.isEmpty() && above.isPresent()) {
            String id = names.find(above.get().linkTo(), parent).orElse(parent);
            search = search.where(above.get().name(), id);
        }
        if (year > 0 && search.dateColumn() != null) {
            search = search.between(year + "-01-01", year + "-12-31");
        } else if (year > 0 && sheet.column("year").isPresent()) {
            search = search.where("year", Integer.toString(year));
        }
        List<ShownEntry> entries = desk.list(search.newest(most, skip)).stream()
                .map(entry -> ShownEntry.of(entry, names, List.of()))
                .toList();
        return new Found(entries, desk.count(search));
    }

    /**
     * A part of the entries asked for.
     *
     * @param all how many there are of them
     */
    public record Found(List<ShownEntry> entries, int all) {
        public Found {
            entries = List.copyOf(entries);
        }
    }

    /**
     * Writes rows of one table, all of them or none.
     *
     * @param act id of what is done, made before the form was sent, so that sending it twice does it once
     * @param words what is done, for the list of what was done lately
     */
    public SaveAnswer save(String who, String table, String act, String words, List<TypedRow> rows) {
        return save(who, act, words, Map.of(table, rows));
    }

    /** The same for rows of several tables; faults are told for the rows counted through all tables. */
    SaveAnswer save(String who, String act, String words, Map<String, List<TypedRow>> tables) {
        Optional<DoneAct> before = desk.book().findAct(desk.owner(), act).map(DoneAct::of);
        if (before.isPresent()) {
            return new SaveAnswer(before, List.of(), List.of());
        }
        Names names = desk.names();
        List<RowFault> faults = new ArrayList<>();
        List<Change> changes = new ArrayList<>();
        for (Map.Entry<String, List<TypedRow>> table : tables.entrySet()) {
            Sheet sheet = BookDesk.sheet(table.getKey());
            EntryChecks checks = new EntryChecks(desk, sheet, names);
            for (TypedRow row : table.getValue()) {
                List<RowFault> ofRow = checks.faults(changes.size(), row);
                faults.addAll(ofRow);
                Map<String, String> values =
                        ofRow.isEmpty() ? Typed.values(sheet, row.typed(), names) : new LinkedHashMap<>();
                changes.add(
                        row.revision() == 0
                                ? new Change.Add(sheet, row.id(), values)
                                : new Change.Correct(sheet, row.id(), row.revision(), values));
            }
        }
        return faults.isEmpty() ? write(who, act, words, changes) : new SaveAnswer(Optional.empty(), faults, List.of());
    }

    /** The same for new rows whose links are ids and which were looked at before, such as a long log. */
    SaveAnswer saveChecked(String who, String table, String act, String words, List<TypedRow> rows) {
        Sheet sheet = BookDesk.sheet(table);
        List<Change> changes = new ArrayList<>(rows.size());
        rows.forEach(row -> changes.add(new Change.Add(sheet, row.id(), row.typed())));
        return write(who, act, words, changes);
    }

    private SaveAnswer write(String who, String act, String words, List<Change> changes) {
        try {
            return new SaveAnswer(
                    desk.book().write(desk.by(who), act, words, changes).map(DoneAct::of), List.of(), List.of());
        } catch (BadEntryException e) {
            Sheet sheet = changes.get(e.index()).sheet();
            String sentence = new EntryChecks(desk, sheet, desk.names()).sentence(String.valueOf(e.getMessage()));
            return new SaveAnswer(Optional.empty(), List.of(new RowFault(e.index(), e.column(), sentence)), List.of());
        } catch (ChangedSinceException e) {
            List<ChangedRow> changed = changed(changes);
            return changed.isEmpty()
                    ? new SaveAnswer(Optional.empty(), List.of(new RowFault(0, "", e.getMessage() + ".")), List.of())
                    : new SaveAnswer(Optional.empty(), List.of(), changed);
        }
    }

    private List<ChangedRow> changed(List<Change> changes) {
        List<ChangedRow> changed = new ArrayList<>();
        Names names = desk.names();
        for (int i = 0; i < changes.size(); i++) {
            if (changes.get(i) instanceof Change.Correct correct) {
                Optional<Entry> now = desk.find(correct.sheet(), correct.id());
                if (now.isPresent() && (now.get().removed() || now.get().revision() != correct.revision())) {
                    Entry entry = now.get();
                    changed.add(new ChangedRow(
                            i,
                            entry.removed()
                                    ? "This entry was taken out by " + entry.who() + " in the meantime."
                                    : entry.who() + " changed this entry in the meantime.",
                            ShownEntry.of(entry, names, List.of())));
                }
            }
        }
        return changed;
    }

    /**
     * Takes an entry out; it can be brought back.
     *
     * @param revision the revision that was seen
     * @throws org.nestyear.app.service.Refusal if others belong to it, or somebody changed it meanwhile
     */
    public void remove(String who, String table, String id, int revision) {
        desk.remove(who, BookDesk.sheet(table), id, revision);
    }

    /** What was done, newest first. */
    public List<DoneAct> done(int most) {
        return desk.listActs(most).stream().map(DoneAct::of).toList();
    }

    /** Something that was done, if it was. */
    public Optional<DoneAct> findAct(String id) {
        return desk.book().findAct(desk.owner(), id).map(DoneAct::of);
    }

    /**
     * Takes an act back; if it took another back, that one is done again.
     *
     * @throws org.nestyear.app.service.Refusal if it cannot be taken back any more
     */
    public DoneAct undo(String who, String act) {
        return DoneAct.of(desk.undo(who, act));
    }
}
