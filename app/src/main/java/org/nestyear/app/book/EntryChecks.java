package org.nestyear.app.book;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.nestyear.app.book.SaveAnswer.RowFault;
import org.nestyear.records.book.BadEntryException;
import org.nestyear.records.book.Column;
import org.nestyear.records.book.ColumnKind;
import org.nestyear.records.book.EntryCheck;
import org.nestyear.records.book.Search;
import org.nestyear.records.book.Sheet;

/** Looks at typed rows of one table and says everything that cannot stand, each at its cell. */
final class EntryChecks {
    private final BookDesk desk;
    private final Sheet sheet;
    private final Names names;
    private final Map<String, Integer> rowOfKey = new HashMap<>();

    EntryChecks(BookDesk desk, Sheet sheet, Names names) {
        this.desk = desk;
        this.sheet = sheet;
        this.names = names;
    }

    /**
     * The faults of a row.
     *
     * @param row its place among the rows, from 0
     */
    List<RowFault> faults(int row, TypedRow typed) {
        List<RowFault> faults = new ArrayList<>();
        for (Column column : sheet.columns()) {
            String text = typed.typed().getOrDefault(column.name(), "");
            if (text.isBlank()) {
                if (column.required()) {
                    faults.add(new RowFault(row, column.name(), "This is empty; expected " + expected(column) + "."));
                }
            } else {
                look(row, column, text, faults);
            }
        }
        return faults.isEmpty() ? faultsOfWhole(row, typed) : faults;
    }

    private void look(int row, Column column, String text, List<RowFault> faults) {
        try {
            String value =
                    Typed.values(sheet, Map.of(column.name(), text), names).getOrDefault(column.name(), "");
            if (column.plain(value).isEmpty()) {
                faults.add(new RowFault(
                        row, column.name(), "This is \"" + text + "\"; expected " + expected(column) + "."));
            }
        } catch (Typed.Misunderstood e) {
            faults.add(new RowFault(row, column.name(), sentence(String.valueOf(e.getMessage())) + maybe(e.advice())));
        }
    }

    private List<RowFault> faultsOfWhole(int row, TypedRow typed) {
        EntryCheck check = desk.book().check();
        Map<String, String> values;
        try {
            values = check.plain(
                    sheet,
                    Typed.values(sheet, typed.typed(), names),
                    desk.book().now(),
                    row);
        } catch (BadEntryException e) {
            return List.of(new RowFault(row, e.column(), sentence(String.valueOf(e.getMessage()))));
        }
        if (sheet.key().isEmpty()) {
            return List.of();
        }
        Integer earlier = rowOfKey.putIfAbsent(sheet.identity(values), row);
        if (earlier != null) {
            return List.of(new RowFault(
                    row, "", "This tells of the same thing as row " + (earlier + 1) + "; expected each thing once."));
        }
        Search same = Search.of(sheet);
        for (String column : sheet.key()) {
            same = same.where(column, values.getOrDefault(column, ""));
        }
        boolean taken = desk.list(same).stream().anyMatch(entry -> !entry.id().equals(typed.id()));
        return taken
                ? List.of(new RowFault(
                        row,
                        sheet.isNamed() ? Sheet.NAME : "",
                        sheet.isNamed()
                                ? "\"" + values.get(Sheet.NAME) + "\" is taken already; expected a name of its own."
                                : "Another entry tells of the same thing; expected a correction of that one."))
                : List.of();
    }

    /** A sentence with the labels of columns in place of their names. */
    String sentence(String problem) {
        String words = problem;
        for (Column column : sheet.columns()) {
            if (column.name().contains("_")) {
                words = words.replaceAll("\\b" + column.name() + "\\b", "“" + column.label() + "”");
            }
        }
        return words.endsWith(".") ? words : words + ".";
    }

    private static String maybe(String advice) {
        return advice.isEmpty() ? "" : " Maybe " + advice + ".";
    }

    private static String expected(Column column) {
        return column.kind() == ColumnKind.LINK
                ? "one of the entries under " + BookDesk.sheet(column.linkTo()).title()
                : column.expected();
    }
}
