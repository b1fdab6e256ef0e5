package org.nestyear.records.book;

import java.util.ArrayList;
import java.util.List;

/**
 * A table of the database as it is, for carrying a whole account from one place to another.
 *
 * @param name its name
 * @param columns its columns but the owner
 * @param order columns that put its rows in one order everywhere
 */
public record RawTable(String name, List<Cell> columns, List<String> order) {
    public RawTable {
        columns = List.copyOf(columns);
        order = List.copyOf(order);
    }

    /**
     * A column.
     *
     * @param name its name
     * @param kind what it holds
     * @param empty whether it may hold nothing
     */
    public record Cell(String name, ColumnKind kind, boolean empty) {}

    /** Every table that holds something of a keeper, parents first; pictures, which are bytes, apart. */
    public static List<RawTable> list() {
        List<RawTable> all = new ArrayList<>();
        all.add(new RawTable(
                "season",
                List.of(
                        told("id"),
                        told("kind"),
                        told("file_name"),
                        maybe("folder"),
                        maybe("season_text"),
                        maybe("goal"),
                        told("opened_at"),
                        told("created_at"),
                        told("changed_at")),
                List.of("created_at", "id")));
        all.add(new RawTable(
                "season_file",
                List.of(
                        told("season_id"),
                        told("file_name"),
                        told("file_text"),
                        told("created_at"),
                        told("changed_at")),
                List.of("created_at", "season_id", "file_name")));
        all.add(new RawTable(
                "act",
                List.of(
                        told("id"),
                        told("who"),
                        told("words"),
                        whole("entries"),
                        maybe("undoes"),
                        maybe("undone_by"),
                        told("created_at"),
                        told("changed_at")),
                List.of("created_at", "id")));
        all.add(new RawTable(
                "correction",
                List.of(
                        told("id"),
                        told("act"),
                        told("was_act"),
                        told("sheet"),
                        told("entry"),
                        new Cell("column_name", ColumnKind.TEXT, false),
                        maybe("was"),
                        maybe("became"),
                        told("created_at"),
                        told("changed_at")),
                List.of("created_at", "id")));
        all.add(new RawTable(
                "feed",
                List.of(
                        told("id"),
                        told("name"),
                        told("secret_sha256"),
                        maybe("revoked_at"),
                        told("created_at"),
                        told("changed_at")),
                List.of("created_at", "id")));
        Sheets.list().forEach(sheet -> all.add(of(sheet)));
        return all;
    }

    private static RawTable of(Sheet sheet) {
        List<Cell> cells = new ArrayList<>();
        for (String kept : EntryRows.KEPT) {
            if (kept.equals("revision")) {
                cells.add(whole(kept));
            } else if (!kept.equals("owner")) {
                cells.add(new Cell(kept, ColumnKind.TEXT, kept.equals("removed_act")));
            }
        }
        sheet.columns().forEach(column -> cells.add(new Cell(column.name(), column.kind(), !column.required())));
        return new RawTable(sheet.name(), cells, List.of("created_at", "id"));
    }

    /** What tells a row from all others of the table. */
    public String identity(List<String> row) {
        return name.equals("season_file") ? row.get(0) + "\u0000" + row.get(1) : row.get(0);
    }

    /** Names of the columns, in order. */
    public List<String> columnNames() {
        return columns.stream().map(Cell::name).toList();
    }

    private static Cell told(String name) {
        return new Cell(name, ColumnKind.TEXT, false);
    }

    private static Cell maybe(String name) {
        return new Cell(name, ColumnKind.TEXT, true);
    }

    private static Cell whole(String name) {
        return new Cell(name, ColumnKind.WHOLE, false);
    }
}
