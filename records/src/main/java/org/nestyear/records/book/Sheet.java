package org.nestyear.records.book;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A record table: what one of its entries tells.
 *
 * @param name its name in the database and in files
 * @param title its name on a page
 * @param what what an entry is, in one sentence
 * @param columns its columns, those of the book-keeping (id, who, stamps) left out
 * @param key columns by which two entries are the same thing; empty where only entries alike in all columns are
 * @param rules what must hold between the columns of one entry
 */
public record Sheet(String name, String title, String what, List<Column> columns, List<String> key, List<Rule> rules) {
    /** Column that names an entry. */
    public static final String NAME = "name";

    public Sheet {
        columns = List.copyOf(columns);
        key = List.copyOf(key);
        rules = List.copyOf(rules);
    }

    /**
     * What must hold between the columns of one entry.
     *
     * @param column the column that is pointed to
     * @param expected what was expected, as the end of a sentence
     * @param holds whether the plain values of an entry are as they should be
     */
    public record Rule(String column, String expected, Check holds) {}

    /** A test of the plain values of an entry, by column. */
    @FunctionalInterface
    public interface Check {
        boolean test(Map<String, String> values);
    }

    Sheet where(String column, String expected, Check holds) {
        List<Rule> more = new ArrayList<>(rules);
        more.add(new Rule(column, expected, holds));
        return new Sheet(name, title, what, columns, key, more);
    }

    Sheet keyed(String... by) {
        return new Sheet(name, title, what, columns, List.of(by), rules);
    }

    /** The column of this name, if there is one. */
    public Optional<Column> column(String column) {
        return columns.stream().filter(c -> c.name().equals(column)).findFirst();
    }

    /** Whether entries have names. */
    public boolean isNamed() {
        return column(NAME).isPresent();
    }

    /** Names of all columns, in order. */
    public List<String> columnNames() {
        return columns.stream().map(Column::name).toList();
    }

    /** What makes two entries the same thing: the values of the key, or of all columns where there is none. */
    public String identity(Map<String, String> values) {
        List<String> by = key.isEmpty() ? columnNames() : key;
        StringBuilder text = new StringBuilder();
        for (String column : by) {
            // A separator no cell can hold.
            text.append(values.getOrDefault(column, "")).append('\u0000');
        }
        return text.toString();
    }
}
