package org.nestyear.app.book;

import java.util.List;
import org.nestyear.records.book.Sheet;
import org.nestyear.records.book.Sheets;

/**
 * A record table in words, for faces that may not see the tables themselves.
 *
 * @param name its name in files and commands
 * @param title its name on a page
 * @param what what an entry of it is, one sentence
 * @param columns its columns
 */
public record TableWords(String name, String title, String what, List<ColumnWords> columns) {
    /**
     * A column in words.
     *
     * @param name its name, with the unit where it has one
     * @param label its name on a page
     * @param required whether every entry tells it
     * @param expected what it may hold
     */
    public record ColumnWords(String name, String label, boolean required, String expected) {}

    public TableWords {
        columns = List.copyOf(columns);
    }

    /** A table in words. */
    static TableWords of(Sheet sheet) {
        return new TableWords(
                sheet.name(),
                sheet.title(),
                sheet.what(),
                sheet.columns().stream()
                        .map(column ->
                                new ColumnWords(column.name(), column.label(), column.required(), column.expected()))
                        .toList());
    }

    /**
     * The table of this name in words.
     *
     * @throws org.nestyear.app.service.Refusal if there is none
     */
    public static TableWords named(String name) {
        return of(BookDesk.sheet(name));
    }

    /** All tables, those that others belong to first. */
    public static List<TableWords> all() {
        return Sheets.list().stream().map(TableWords::of).toList();
    }
}
