package org.nestyear.app.service;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.nestyear.core.source.Parameter;
import org.nestyear.core.source.ParameterTable;
import org.nestyear.core.source.Source;
import org.nestyear.data.CatalogueFiles;

/** Every number of the catalogue, table by table as the files have them, and the one that stands in no file. */
public final class SourceBook {
    private SourceBook() {}

    /**
     * A table of the catalogue.
     *
     * @param name of its file, which is also its place on a page
     * @param title its subject in words
     * @param rows in file order
     */
    public record Table(String name, String title, List<Parameter> rows) {
        public Table {
            rows = List.copyOf(rows);
        }
    }

    /** All tables. */
    public static List<Table> tables() {
        return Kept.TABLES;
    }

    /** The tables of words, the sources in full. */
    public static List<Words> words() {
        return CatalogueFiles.wordTables().stream()
                .map(table -> new Words(table.name(), title(table.name()), table.head(), table.rows()))
                .toList();
    }

    /**
     * A table of words, such as the plants.
     *
     * @param head names of the columns
     * @param rows cells
     */
    public record Words(String name, String title, List<String> head, List<List<String>> rows) {
        public Words {
            head = List.copyOf(head);
            rows = List.copyOf(rows);
        }
    }

    private static String title(String name) {
        String words = name.replace('_', ' ');
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    /** All publications, data sets and practices, in file order, without those no number comes from. */
    public static List<Source> sources() {
        Map<String, Source> sources = new LinkedHashMap<>();
        tables().forEach(table ->
                table.rows().forEach(row -> sources.put(row.source().key(), row.source())));
        return List.copyOf(sources.values());
    }

    /** Where a number stands on a page of all of them. */
    public static String anchor(String table, String id) {
        return table + "." + id;
    }

    /** Where this number stands, if it is in a table as it is. */
    public static Optional<String> find(Parameter row) {
        return Optional.ofNullable(Kept.ANCHORS.get(key(row)));
    }

    // Species share the names of their numbers, not what stands behind them.
    private static String key(Parameter row) {
        return String.join(
                "|", row.id(), String.valueOf(row.value()), row.source().citation(), row.borrowedFrom());
    }

    /** Read when first asked for, and then kept. */
    private static final class Kept {
        private static final List<Table> TABLES = read();
        private static final Map<String, String> ANCHORS = anchors();

        private static List<Table> read() {
            Map<String, String> species = CatalogueFiles.speciesTables();
            List<Table> tables = new ArrayList<>();
            for (ParameterTable table : CatalogueFiles.all()) {
                String latin = species.get(table.name());
                String title = latin == null ? title(table.name()) : latin;
                tables.add(new Table(table.name(), title, List.copyOf(table.rows())));
            }
            tables.add(new Table("sun", "Sun", List.of(SunAnswer.ALBEDO)));
            return List.copyOf(tables);
        }

        private static Map<String, String> anchors() {
            Map<String, String> anchors = new LinkedHashMap<>();
            for (Table table : TABLES) {
                table.rows().forEach(row -> anchors.putIfAbsent(key(row), anchor(table.name(), row.id())));
            }
            return anchors;
        }
    }
}
