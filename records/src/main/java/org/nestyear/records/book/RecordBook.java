package org.nestyear.records.book;

import java.sql.PreparedStatement;
import java.time.Instant;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import javax.sql.DataSource;
import org.jspecify.annotations.Nullable;
import org.springframework.dao.DataAccessException;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.datasource.DataSourceTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * A keeper's records. What is written together is kept together or not at all; nothing is ever deleted, old values stay
 * and every act can be taken back. Safe for many threads and for several programs on the same records.
 */
public final class RecordBook {
    private static final int ROWS_AT_ONCE = 1000;

    private final JdbcTemplate jdbc;
    private final TransactionTemplate transaction;
    private final InstantSource clock;
    private final EntryCheck check;
    private final ActLog acts;
    private final UndoWork undoing;

    /**
     * The records in a database whose tables are up to date.
     *
     * @param check judges what may be written
     */
    public RecordBook(DataSource source, InstantSource clock, EntryCheck check) {
        this.jdbc = new JdbcTemplate(source);
        this.jdbc.setFetchSize(ROWS_AT_ONCE);
        this.transaction = new TransactionTemplate(new DataSourceTransactionManager(source));
        this.clock = clock;
        this.check = check;
        this.acts = new ActLog(jdbc, clock);
        this.undoing = new UndoWork(jdbc);
    }

    /** An id for a new entry. */
    public static String newId() {
        return UUID.randomUUID().toString();
    }

    /** What judges the values of an entry. */
    public EntryCheck check() {
        return check;
    }

    /** The moment that stamps would bear now. */
    public Instant now() {
        return Stamps.now(clock);
    }

    /**
     * Makes all changes, or none. Sending the very same new entry again, by its id, changes nothing.
     *
     * @param words what is done, for the list of acts
     * @return the act, or empty if there was nothing to do
     * @throws BadEntryException the first value that cannot stand, or a link that leads nowhere
     * @throws ChangedSinceException if an entry is not as the writer saw it
     */
    public Optional<Act> write(By by, String words, List<? extends Change> changes) {
        return write(by, newId(), words, changes);
    }

    /**
     * The same under an id that the caller made: sending it twice does it once.
     *
     * @param actId id of the act; if it was done before, it is returned and nothing is written
     */
    public Optional<Act> write(By by, String actId, String words, List<? extends Change> changes) {
        Optional<Act> before = findAct(by.owner(), actId);
        if (before.isPresent()) {
            return before;
        }
        Instant now = now();
        List<Map<String, String>> plain = new ArrayList<>();
        for (int i = 0; i < changes.size(); i++) {
            Change change = changes.get(i);
            plain.add(
                    change instanceof Change.Add add
                            ? check.plain(add.sheet(), add.values(), now, i)
                            : change instanceof Change.Correct correct
                                    ? check.plain(correct.sheet(), correct.values(), now, i)
                                    : Map.of());
        }
        try {
            return Objects.requireNonNull(transaction.execute(status -> {
                Optional<Act> meanwhile = findAct(by.owner(), actId);
                if (meanwhile.isPresent()) {
                    return meanwhile;
                }
                Instant at = acts.nextTime(by.owner());
                Writing writing = new Writing(by, actId, Stamps.text(at), plain);
                // The act stands first: entries refer to it.
                acts.insert(by, writing.act, at, words, null);
                for (int i = 0; i < changes.size(); i++) {
                    writing.take(changes.get(i), i);
                }
                writing.flush();
                if (writing.touched == 0) {
                    status.setRollbackOnly();
                    return Optional.<Act>empty();
                }
                jdbc.update("UPDATE act SET entries = ? WHERE id = ?", writing.touched, writing.act);
                return Optional.of(new Act(writing.act, at, by.who(), words, writing.touched, null, null));
            }));
        } catch (DataAccessException e) {
            if (!Clash.isTwice(e)) {
                throw e;
            }
            throw new BadEntryException(
                    0,
                    "",
                    "an entry of that name or for the same thing is there already",
                    "another name, or a correction");
        }
    }

    /**
     * Takes an act back, with everything it did.
     *
     * @return the act that did so
     * @throws ChangedSinceException if it was taken back before, or one of its entries was changed later
     */
    public Act undo(By by, String actId) {
        try {
            return Objects.requireNonNull(transaction.execute(status -> takeBack(by, actId)));
        } catch (DataAccessException e) {
            if (!Clash.isTwice(e)) {
                throw e;
            }
            throw new ChangedSinceException("that cannot be taken back: its name was given to something else since");
        }
    }

    private Act takeBack(By by, String actId) {
        Act act = findAct(by.owner(), actId)
                .orElseThrow(() -> new ChangedSinceException("there is nothing of that sort to take back"));
        if (act.undoneBy() != null) {
            throw new ChangedSinceException("\"" + act.words() + "\" was taken back before");
        }
        Instant at = acts.nextTime(by.owner());
        String id = newId();
        @Nullable String first = act.undoes();
        if (first == null) {
            acts.insert(by, id, at, "took back: " + act.words(), actId);
            int touched = undoing.undo(by, act, id, Stamps.text(at));
            acts.finish(by, act, id, touched);
            return findAct(by.owner(), id).orElseThrow();
        }
        Act original = findAct(by.owner(), first).orElseThrow();
        acts.insert(by, id, at, "did again: " + original.words(), actId);
        int touched = undoing.redo(by, original, act, Stamps.text(at));
        acts.finish(by, act, id, touched);
        jdbc.update("UPDATE act SET undone_by = NULL WHERE id = ?", first);
        return findAct(by.owner(), id).orElseThrow();
    }

    /** The newest act that can be taken back and is none of taking back itself. */
    public Optional<Act> findLast(String owner) {
        return acts.findLast(owner);
    }

    /** An act by its id. */
    public Optional<Act> findAct(String owner, String id) {
        return acts.find(owner, id);
    }

    /** The newest acts, newest first. */
    public List<Act> listActs(String owner, int most) {
        return acts.list(owner, most);
    }

    /** An entry by its id, also one that was taken out. */
    public Optional<Entry> find(String owner, Sheet sheet, String id) {
        return jdbc
                .query(
                        "SELECT * FROM " + sheet.name() + " WHERE owner = ? AND id = ?",
                        (row, number) -> EntryRows.read(sheet, row),
                        owner,
                        id)
                .stream()
                .findFirst();
    }

    /** The entries that were asked for, those taken out left out. */
    public List<Entry> list(String owner, Search search) {
        List<Entry> found = new ArrayList<>();
        each(owner, search, found::add);
        return found;
    }

    /** Hands over the entries that were asked for one by one, for tables too long to hold. */
    public void each(String owner, Search search, Consumer<Entry> take) {
        SearchSql sql = SearchSql.of(owner, search);
        // A cursor on PostgreSQL lives within a transaction only; on SQLite one would take the write lock.
        jdbc.query(
                sql.select(),
                row -> {
                    take.accept(EntryRows.read(search.sheet(), row));
                },
                sql.values().toArray());
    }

    /**
     * Hands over the ids of a table with some of their values, in the order they were written.
     *
     * @param columns names of the columns that are wanted
     */
    public void eachOf(String owner, Sheet sheet, List<String> columns, BiConsumer<String, Map<String, String>> take) {
        List<Column> wanted =
                columns.stream().map(name -> sheet.column(name).orElseThrow()).toList();
        jdbc.query(
                EntryRows.select(sheet, columns),
                row -> {
                    take.accept(row.getString("id"), EntryRows.values(wanted, row));
                },
                owner);
    }

    /** The ids of entries that were taken out. */
    public Set<String> removed(String owner, Sheet sheet) {
        return Set.copyOf(jdbc.queryForList(
                "SELECT id FROM " + sheet.name() + " WHERE owner = ? AND removed_act IS NOT NULL",
                String.class,
                owner));
    }

    /** How many entries there are. */
    public int count(String owner, Search search) {
        SearchSql sql = SearchSql.of(owner, search);
        Integer number =
                jdbc.queryForObject(sql.count(), Integer.class, sql.values().toArray());
        return number == null ? 0 : number;
    }

    /** Every value of an entry that was replaced, newest first. */
    public List<Correction> listCorrections(String owner, Sheet sheet, String id) {
        return Corrections.list(jdbc, owner, sheet, id);
    }

    /** Changes of one act on their way into the tables; new entries of one table go there in batches. */
    private final class Writing {
        private final By by;
        private final String act;
        private final String stamp;
        private final List<Map<String, String>> plain;
        private final List<EntryRows.NewRow> waiting = new ArrayList<>();
        private final Map<String, Set<String>> known = new HashMap<>();
        private @Nullable Sheet sheet;
        private int touched;

        Writing(By by, String act, String stamp, List<Map<String, String>> plain) {
            this.by = by;
            this.act = act;
            this.stamp = stamp;
            this.plain = plain;
        }

        void take(Change change, int index) {
            if (!change.sheet().equals(sheet) || !(change instanceof Change.Add)) {
                flush();
                sheet = change.sheet();
            }
            if (change instanceof Change.Add add) {
                add(add, index);
            } else if (change instanceof Change.Correct correct) {
                correct(correct, index);
            } else if (change instanceof Change.Remove remove) {
                remove(remove, index);
            }
        }

        void flush() {
            Sheet to = sheet;
            if (to == null || waiting.isEmpty()) {
                return;
            }
            jdbc.batchUpdate(
                    EntryRows.insert(to),
                    waiting,
                    ROWS_AT_ONCE,
                    (PreparedStatement row, EntryRows.NewRow added) -> EntryRows.bindInsert(row, to, added));
            known.computeIfAbsent(to.name(), name -> new HashSet<>())
                    .addAll(waiting.stream().map(EntryRows.NewRow::id).toList());
            waiting.clear();
        }

        private void add(Change.Add add, int index) {
            Map<String, String> values = plain.get(index);
            if (Links.isBulk(plain.size())) {
                // An import looked for entries of the same id before; one query for each row would take minutes.
                checkLinks(add.sheet(), values, index);
            } else {
                Optional<Entry> there = find(by.owner(), add.sheet(), add.id());
                if (there.isPresent()) {
                    if (there.get().values().equals(values) && !there.get().removed()) {
                        return;
                    }
                    throw new ChangedSinceException("that entry is there already and has other values");
                }
                checkLinks(add.sheet(), values, index);
                checkName(add.sheet(), add.id(), values, index);
            }
            waiting.add(new EntryRows.NewRow(add.id(), by, stamp, act, values));
            touched++;
        }

        private void correct(Change.Correct correct, int index) {
            Entry seen = seen(correct, correct.revision());
            Map<String, String> values = plain.get(index);
            if (seen.values().equals(values)) {
                return;
            }
            checkLinks(correct.sheet(), values, index);
            checkName(correct.sheet(), correct.id(), values, index);
            Corrections.insert(jdbc, by, act, stamp, seen, values);
            Corrections.update(jdbc, by, act, stamp, seen, values);
            touched++;
        }

        private void remove(Change.Remove remove, int index) {
            Entry seen = seen(remove, remove.revision());
            for (Map.Entry<Sheet, Column> link : EntryRows.linksTo(remove.sheet())) {
                Integer number = jdbc.queryForObject(
                        "SELECT count(*) FROM " + link.getKey().name() + " WHERE "
                                + link.getValue().name() + " = ? AND removed_act IS NULL",
                        Integer.class,
                        seen.id());
                if (number != null && number > 0) {
                    throw new BadEntryException(
                            index,
                            "",
                            "this entry is still used by " + number + " under "
                                    + link.getKey().title(),
                            "those to be taken out first");
                }
            }
            Corrections.insertTakenOut(jdbc, by, act, stamp, seen);
            jdbc.update(
                    "UPDATE " + remove.sheet().name() + " SET removed_act = ?, changed_at = ?,"
                            + " revision = revision + 1 WHERE id = ?",
                    act,
                    stamp,
                    seen.id());
            touched++;
        }

        private Entry seen(Change change, int revision) {
            Entry seen = find(by.owner(), change.sheet(), change.id())
                    .orElseThrow(() -> new ChangedSinceException("there is no such entry"));
            if (seen.removed()) {
                throw new ChangedSinceException("that entry was taken out by " + seen.who());
            }
            if (seen.revision() != revision) {
                throw new ChangedSinceException("that entry was changed by " + seen.who() + " in the meantime");
            }
            return seen;
        }

        private void checkLinks(Sheet of, Map<String, String> values, int index) {
            Links.check(jdbc, by.owner(), of, values, index, known);
        }

        private void checkName(Sheet of, String id, Map<String, String> values, int index) {
            if (!of.isNamed()) {
                return;
            }
            Search same = Search.of(of);
            for (String column : of.key()) {
                same = same.where(column, values.getOrDefault(column, ""));
            }
            if (list(by.owner(), same).stream().anyMatch(other -> !other.id().equals(id))) {
                throw new BadEntryException(
                        index,
                        Sheet.NAME,
                        "the name \"" + values.get(Sheet.NAME) + "\" is taken under " + of.title(),
                        "a name of its own");
            }
        }
    }
}
