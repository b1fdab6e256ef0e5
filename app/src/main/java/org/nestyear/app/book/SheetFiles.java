package org.nestyear.app.book;

import java.io.Writer;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.nestyear.app.service.Refusal;
import org.nestyear.data.DataFault;
import org.nestyear.data.FaultCode;
import org.nestyear.data.NearestWord;
import org.nestyear.data.PlainTable;
import org.nestyear.data.PlainTableWriter;
import org.nestyear.data.TextSource;
import org.nestyear.records.book.Act;
import org.nestyear.records.book.BadEntryException;
import org.nestyear.records.book.Change;
import org.nestyear.records.book.Column;
import org.nestyear.records.book.Entry;
import org.nestyear.records.book.RecordBook;
import org.nestyear.records.book.Search;
import org.nestyear.records.book.Sheet;

/**
 * One record table as a CSV file, out and back. A row with an id corrects that entry, a row without one is new unless an
 * entry that tells the same is there already. Nothing is written before every row has been found good.
 */
public final class SheetFiles {
    private static final String ID = "id";
    private static final String WHO = "who";
    private static final Pattern UUID = Pattern.compile("[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}");

    private final BookDesk desk;

    public SheetFiles(BookDesk desk) {
        this.desk = desk;
    }

    /** Writes a table: its header, then a row an entry, names in place of ids. */
    public int write(Sheet sheet, Writer to) {
        PlainTableWriter table = new PlainTableWriter(to);
        List<String> header = new ArrayList<>(List.of(ID));
        header.addAll(sheet.columnNames());
        header.add(WHO);
        table.row(header);
        Names names = desk.names();
        int[] rows = {0};
        desk.book().each(desk.owner(), Search.of(sheet), entry -> {
            Map<String, String> shown = BookDesk.shown(entry, names);
            List<String> cells = new ArrayList<>(List.of(entry.id()));
            sheet.columnNames().forEach(column -> cells.add(shown.getOrDefault(column, "")));
            cells.add(entry.who());
            table.row(cells);
            rows[0]++;
        });
        table.finish();
        return rows[0];
    }

    /**
     * What reading a file into a table would change, row by row. Nothing is written.
     *
     * @throws Refusal the first thing that is wrong, with its line
     */
    public ImportPlan plan(Sheet sheet, TextSource file) {
        return plan(sheet, file, desk.names());
    }

    /** The same, with names that earlier files of the same work have taught. */
    ImportPlan plan(Sheet sheet, TextSource file, Names names) {
        try {
            PlainTable table = PlainTable.read(file);
            checkHeader(sheet, table);
            return new Planning(sheet, table, names).plan();
        } catch (DataFault e) {
            throw Refusal.of(e);
        }
    }

    /**
     * Writes what was planned, all of it or nothing.
     *
     * @return the act, or empty if there was nothing to change
     * @throws Refusal if the records changed since in a way that forbids it
     */
    public Optional<Act> apply(String who, ImportPlan plan) {
        return apply(who, RecordBook.newId(), plan);
    }

    /** The same under an act id made before, so that sending it twice does it once. */
    Optional<Act> apply(String who, String actId, ImportPlan plan) {
        List<Change> changes = plan.lines().stream()
                .map(ImportPlan.Line::change)
                .flatMap(Optional::stream)
                .toList();
        return BookDesk.guarded(() -> desk.book()
                .write(
                        desk.by(who),
                        actId,
                        "read " + plan.name() + " into " + plan.sheet().title(),
                        changes));
    }

    private static void checkHeader(Sheet sheet, PlainTable table) {
        List<String> known = new ArrayList<>(sheet.columnNames());
        known.add(ID);
        known.add(WHO);
        for (String name : table.header()) {
            if (!known.contains(name)) {
                String nearest = NearestWord.find(name, known);
                throw table.fault(
                        FaultCode.TABLE_COLUMN,
                        1,
                        name,
                        "the column \"" + name + "\" is none of the table " + sheet.name(),
                        "one of " + String.join(", ", known),
                        nearest == null ? "" : "\"" + nearest + "\" is meant");
            }
        }
        for (var column : sheet.columns()) {
            if (column.required() && !table.header().contains(column.name())) {
                throw table.fault(
                        FaultCode.TABLE_COLUMN,
                        1,
                        "",
                        "the column " + column.name() + " is missing",
                        "at least "
                                + String.join(
                                        ", ",
                                        sheet.columns().stream()
                                                .filter(c -> c.required())
                                                .map(c -> c.name())
                                                .toList()),
                        "");
            }
        }
    }

    /** What a row of a file tells. */
    private record Told(int line, String id, Map<String, String> values) {}

    /** One file held against one table. */
    private final class Planning {
        private final Sheet sheet;
        private final PlainTable table;
        private final Names names;
        private final Map<String, Entry> byId = new HashMap<>();
        private final Map<String, List<Entry>> bySame = new HashMap<>();
        private final Set<String> removed = new HashSet<>();
        private final List<String> columns;
        private final Map<String, Integer> lineOfId = new HashMap<>();
        private final Map<String, Integer> lineOfKey = new HashMap<>();

        Planning(Sheet sheet, PlainTable table, Names names) {
            this.sheet = sheet;
            this.table = table;
            this.names = names;
            this.columns = table.header().stream()
                    .filter(name -> !name.equals(ID) && !name.equals(WHO))
                    .toList();
        }

        // Of the entries that are there only those are held that the file may tell of: a table outgrows the memory.
        ImportPlan plan() {
            List<Told> told = new ArrayList<>();
            Optional<DataFault> fault = read(told);
            Set<String> ids = told.stream().map(Told::id).collect(Collectors.toSet());
            Set<String> identities =
                    told.stream().map(row -> sheet.identity(row.values())).collect(Collectors.toSet());
            desk.book().each(desk.owner(), Search.of(sheet), entry -> {
                if (ids.contains(entry.id())) {
                    byId.put(entry.id(), entry);
                }
                String identity = sheet.identity(entry.values());
                if (identities.contains(identity)) {
                    bySame.computeIfAbsent(identity, same -> new ArrayList<>(1)).add(entry);
                }
            });
            removed.addAll(desk.book().removed(desk.owner(), sheet));
            List<ImportPlan.Line> lines = new ArrayList<>();
            for (Told row : told) {
                lines.add(line(row));
            }
            if (fault.isPresent()) {
                throw fault.get();
            }
            return new ImportPlan(sheet, table.name(), lines);
        }

        // Rows up to the first that cannot be understood; an earlier one may still be wrong in another way.
        private Optional<DataFault> read(List<Told> told) {
            try {
                for (PlainTable.Row row : table.rows()) {
                    Map<String, String> typed = new LinkedHashMap<>();
                    for (int i = 0; i < table.header().size(); i++) {
                        typed.put(table.header().get(i), row.cells().get(i));
                    }
                    String id = typed.getOrDefault(ID, "").strip();
                    typed.remove(ID);
                    typed.remove(WHO);
                    told.add(new Told(row.line(), id, values(row.line(), typed)));
                }
                return Optional.empty();
            } catch (DataFault e) {
                return Optional.of(e);
            }
        }

        private ImportPlan.Line line(Told row) {
            Map<String, String> values = row.values();
            checkOnce(row.line(), row.id(), values);
            Entry there = row.id().isEmpty() ? takeSame(values) : byId.get(row.id());
            if (there == null) {
                return added(row.line(), row.id(), values);
            }
            Map<String, String> differences = differences(there, values);
            return differences.isEmpty()
                    ? new ImportPlan.Line(row.line(), ImportPlan.Kind.SAME, Map.of(), Optional.empty())
                    : new ImportPlan.Line(
                            row.line(),
                            ImportPlan.Kind.CORRECTED,
                            differences,
                            Optional.of(
                                    new Change.Correct(sheet, there.id(), there.revision(), merged(there, values))));
        }

        private Map<String, String> values(int line, Map<String, String> typed) {
            try {
                return desk.book()
                        .check()
                        .plain(
                                sheet,
                                Typed.values(sheet, typed, names),
                                desk.book().now(),
                                0);
            } catch (Typed.Misunderstood e) {
                throw table.fault(FaultCode.TABLE_VALUE, line, e.column(), e.found(), e.expected(), e.advice());
            } catch (BadEntryException e) {
                throw table.fault(FaultCode.TABLE_VALUE, line, e.column(), e.problem(), e.expected(), "");
            }
        }

        // Measured things may well be alike; what has a key may not.
        private void checkOnce(int line, String id, Map<String, String> values) {
            Integer earlier = id.isEmpty() ? null : lineOfId.putIfAbsent(id, line);
            if (earlier == null && !sheet.key().isEmpty()) {
                earlier = lineOfKey.putIfAbsent(sheet.identity(values), line);
            }
            if (earlier != null) {
                throw table.fault(
                        FaultCode.TABLE_TWICE,
                        line,
                        "",
                        "the line tells of the same thing as line " + earlier,
                        "each thing once in a file",
                        "");
            }
        }

        private @Nullable Entry takeSame(Map<String, String> values) {
            List<Entry> same = bySame.get(sheet.identity(values));
            return same == null || same.isEmpty() ? null : same.remove(same.size() - 1);
        }

        private ImportPlan.Line added(int line, String id, Map<String, String> values) {
            if (!id.isEmpty() && !UUID.matcher(id).matches()) {
                throw table.fault(
                        FaultCode.TABLE_VALUE,
                        line,
                        ID,
                        "id is \"" + id + "\"",
                        "an id as the program wrote it, or an empty cell for a new entry",
                        "");
            }
            if (removed.contains(id)) {
                throw table.fault(
                        FaultCode.TABLE_VALUE,
                        line,
                        ID,
                        "the entry with this id was taken out",
                        "an entry that is there, or an empty id for a new one",
                        "take its removal back first (undo)");
            }
            if (!id.isEmpty() && !sheet.key().isEmpty() && bySame.containsKey(sheet.identity(values))) {
                throw table.fault(
                        FaultCode.TABLE_TWICE,
                        line,
                        "",
                        "another entry tells of the same thing",
                        "its id, or an empty one, to correct it",
                        "");
            }
            String made = id.isEmpty() ? RecordBook.newId() : id;
            names.learn(sheet, made, values);
            return new ImportPlan.Line(
                    line, ImportPlan.Kind.ADDED, named(values), Optional.of(new Change.Add(sheet, made, values)));
        }

        // A column the file does not have is left as it stands; an empty cell takes the value away.
        private Map<String, String> merged(Entry there, Map<String, String> values) {
            Map<String, String> merged = new LinkedHashMap<>(there.values());
            for (String column : columns) {
                String value = values.get(column);
                if (value == null) {
                    merged.remove(column);
                } else {
                    merged.put(column, value);
                }
            }
            return merged;
        }

        private Map<String, String> differences(Entry there, Map<String, String> values) {
            Map<String, String> differences = new LinkedHashMap<>();
            for (String column : columns) {
                String was = there.text(column);
                String becomes = values.getOrDefault(column, "");
                if (!was.equals(becomes)) {
                    differences.put(column, shown(named(column, was)) + " becomes " + shown(named(column, becomes)));
                }
            }
            return differences;
        }

        private Map<String, String> named(Map<String, String> values) {
            Map<String, String> named = new LinkedHashMap<>();
            values.forEach((column, value) -> named.put(column, named(column, value)));
            return named;
        }

        private String named(String column, String value) {
            String table = sheet.column(column).map(Column::linkTo).orElse("");
            return table.isEmpty() || value.isEmpty() ? value : names.name(table, value);
        }

        private String shown(String value) {
            return value.isEmpty() ? "nothing" : value;
        }
    }
}
