package org.nestyear.app.book;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.nestyear.records.book.Column;
import org.nestyear.records.book.ColumnKind;
import org.nestyear.records.book.RecordBook;
import org.nestyear.records.book.Sheet;
import org.nestyear.records.book.Sheets;

/**
 * What entries that others link to are called: a site by its name, a house by "Site / House". Read once for one piece of
 * work; a table is read when it is first asked for.
 */
final class Names {
    private static final Set<String> LINKED_TO = Sheets.list().stream()
            .flatMap(sheet -> sheet.columns().stream())
            .map(Column::linkTo)
            .filter(name -> !name.isEmpty())
            .collect(Collectors.toUnmodifiableSet());

    private static final String STEP = " / ";
    // What entries without a name of their own are called by.
    private static final List<String> NAMING = List.of("on_date", "species");

    private final RecordBook book;
    private final String owner;
    private final Map<String, Table> tables = new HashMap<>();

    Names(RecordBook book, String owner) {
        this.book = book;
        this.owner = owner;
    }

    /** Names by id, and ids by everything they are called in small letters; null where two are called the same. */
    private record Table(Map<String, String> names, Map<String, @Nullable String> ids) {}

    /** The full name of an entry, or its id where nothing names it. */
    String name(String sheet, String id) {
        return table(sheet).names().getOrDefault(id, id);
    }

    /** All full names of a table with their ids, in the order they were written. */
    List<Map.Entry<String, String>> list(String sheet) {
        return List.copyOf(table(sheet).names().entrySet());
    }

    /** A name that leads back to this id: the full name, or the id itself where two are called the same. */
    String uniqueName(String sheet, String id) {
        String name = name(sheet, id);
        return find(sheet, name).filter(id::equals).isPresent() ? name : id;
    }

    /** The id of what is called so, by its id, its full name, or its own name where only one is called so. */
    Optional<String> find(String sheet, String called) {
        Table table = table(sheet);
        if (table.names().containsKey(called)) {
            return Optional.of(called);
        }
        return Optional.ofNullable(table.ids().get(key(called)));
    }

    /** Full names that may be meant, for a message. */
    List<String> known(String sheet) {
        return List.copyOf(table(sheet).names().values());
    }

    /** Makes an entry known that is about to be written, so that later rows may name it. */
    void learn(Sheet sheet, String id, Map<String, String> values) {
        // What nothing links to needs no name, and its table may be too long to read for one.
        if (!LINKED_TO.contains(sheet.name())) {
            return;
        }
        put(table(sheet.name()), sheet, id, values);
    }

    private Table table(String name) {
        Table table = tables.get(name);
        if (table == null) {
            table = new Table(new LinkedHashMap<>(), new HashMap<>());
            tables.put(name, table);
            Sheet sheet = Sheets.get(name);
            Table filled = table;
            List<String> columns = new ArrayList<>(sheet.isNamed() ? List.of(Sheet.NAME) : NAMING);
            parent(sheet).ifPresent(column -> columns.add(column.name()));
            columns.removeIf(column -> sheet.column(column).isEmpty());
            book.eachOf(owner, sheet, columns, (id, values) -> put(filled, sheet, id, values));
        }
        return table;
    }

    private void put(Table table, Sheet sheet, String id, Map<String, String> values) {
        String own = ownName(sheet, values);
        String full = own;
        Optional<Column> parent = parent(sheet);
        if (parent.isPresent() && values.containsKey(parent.get().name())) {
            full = name(parent.get().linkTo(), values.getOrDefault(parent.get().name(), "")) + STEP + own;
        }
        table.names().put(id, full);
        call(table, full, id);
        if (!full.equals(own)) {
            call(table, own, id);
        }
    }

    private static void call(Table table, String name, String id) {
        String key = key(name);
        String other = table.ids().get(key);
        table.ids().put(key, table.ids().containsKey(key) && !id.equals(other) ? null : id);
    }

    // A batch is called by its name alone: names of batches are unique.
    private static Optional<Column> parent(Sheet sheet) {
        return sheet.name().equals("batch")
                ? Optional.empty()
                : sheet.columns().stream()
                        .filter(c -> c.kind() == ColumnKind.LINK && c.required())
                        .findFirst();
    }

    private static String ownName(Sheet sheet, Map<String, String> values) {
        if (sheet.isNamed()) {
            return values.getOrDefault(Sheet.NAME, "");
        }
        return values.getOrDefault("on_date", "") + " " + values.getOrDefault("species", sheet.title());
    }

    private static String key(String name) {
        return name.strip().toLowerCase(Locale.ROOT);
    }
}
