package org.nestyear.app.web;

import java.util.List;

/**
 * A table to be filled in like a sheet of paper.
 *
 * @param person who writes at this browser
 * @param act id of what sending the sheet does
 * @param page which part of the entries is shown, from 1
 * @param columns headings
 * @param rows the entries, then empty rows
 * @param notice what just happened, or empty
 * @param undo act that its undo takes back, or empty
 * @param problem what is wrong, a sentence each
 * @param earlier address of the page before, or empty
 * @param later address of the page after, or empty
 */
public record SheetView(
        PageHead head,
        String person,
        String name,
        String title,
        String act,
        int page,
        List<String> columns,
        List<Row> rows,
        String notice,
        String undo,
        List<String> problem,
        String earlier,
        String later) {
    public SheetView {
        columns = List.copyOf(columns);
        rows = List.copyOf(rows);
        problem = List.copyOf(problem);
    }

    /**
     * A row.
     *
     * @param number its number on the sheet, from 1
     * @param revision the revision that was seen, 0 for a new entry
     * @param problem what is wrong with the row as a whole, or empty
     */
    public record Row(int number, String id, int revision, String problem, List<FieldView> cells) {
        public Row {
            cells = List.copyOf(cells);
        }
    }

    /**
     * A table read from a file or written to one.
     *
     * @param columns headings a file may have, by the names files use
     * @param summary how many lines do what, or empty before a file was looked at
     * @param lines what each line would do
     * @param hidden how many lines are not shown
     * @param ready id under which the plan is kept until it is written, or empty
     */
    public record File(
            PageHead head,
            String person,
            String name,
            String title,
            String columns,
            String summary,
            List<Line> lines,
            int hidden,
            String ready,
            String notice,
            String undo,
            List<String> problem) {
        public File {
            lines = List.copyOf(lines);
            problem = List.copyOf(problem);
        }
    }

    /** A line of a file. */
    public record Line(int number, String kind, String told) {}
}
