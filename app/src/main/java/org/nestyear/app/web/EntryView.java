package org.nestyear.app.web;

import java.util.List;

/**
 * The page of one entry, new or to be corrected.
 *
 * @param person who writes at this browser
 * @param title what the page is about
 * @param what what such an entry is
 * @param table name of its table
 * @param tableTitle title of its table
 * @param id of the entry
 * @param revision the revision shown, 0 for a new entry
 * @param act id of what sending the form does
 * @param stamp who wrote it and when, or empty
 * @param removed whether it was taken out
 * @param saved id of the act that has just saved it, or empty
 * @param notice what just happened, or empty
 * @param problem what belongs to no field, a sentence each
 * @param caution a hazard of the work this is about, or empty
 * @param history replaced values, newest first
 * @param next what may be written down below this entry
 */
public record EntryView(
        PageHead head,
        String person,
        String title,
        String what,
        String table,
        String tableTitle,
        String id,
        int revision,
        String act,
        String stamp,
        boolean removed,
        String saved,
        String notice,
        List<String> problem,
        String caution,
        List<FieldView> fields,
        List<Replaced> history,
        List<Next> next) {
    public EntryView {
        problem = List.copyOf(problem);
        fields = List.copyOf(fields);
        history = List.copyOf(history);
        next = List.copyOf(next);
    }

    /** A value that was replaced. */
    public record Replaced(String when, String who, String label, String was, String became, boolean takenBack) {}

    /** Another page that fits now. */
    public record Next(String address, String words) {}

    /**
     * Entries of a table.
     *
     * @param span which of them are shown, in words
     * @param parentLabel what they are looked for by, or empty
     * @param parent what they belong to, or empty for all
     * @param year their year, or empty for all
     * @param byYear whether they can be looked for by year
     * @param columns headings
     * @param earlier address of the page before, or empty
     * @param later address of the page after, or empty
     */
    public record Table(
            PageHead head,
            String name,
            String title,
            String what,
            String notice,
            String span,
            String parentLabel,
            String parent,
            List<FieldView.Option> parents,
            String year,
            boolean byYear,
            List<String> columns,
            List<Row> rows,
            String earlier,
            String later) {
        public Table {
            parents = List.copyOf(parents);
            columns = List.copyOf(columns);
            rows = List.copyOf(rows);
        }
    }

    /** One of the entries. */
    public record Row(String address, List<String> cells, String who) {
        public Row {
            cells = List.copyOf(cells);
        }
    }
}
