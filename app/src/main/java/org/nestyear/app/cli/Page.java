package org.nestyear.app.cli;

import java.util.ArrayList;
import java.util.List;

/** Sets text in lines of at most 80 characters, as read on a terminal. */
final class Page {
    private static final int WIDTH = 80;

    private final StringBuilder text = new StringBuilder();
    private final List<String> unset = new ArrayList<>();

    /** A text with each of its lines set as a paragraph. */
    static String set(String text) {
        Page page = new Page();
        text.lines().forEach(line -> page.hanging(0, 4, line));
        return page.toString();
    }

    /** A heading with a blank line before it. */
    void heading(String heading) {
        blank();
        text.append(heading).append('\n');
        unset.add(heading);
    }

    void blank() {
        if (text.length() > 0) {
            text.append('\n');
            unset.add("");
        }
    }

    /** A paragraph, its further lines indented like its first. */
    void paragraph(int indent, String words) {
        hanging(indent, indent, words);
    }

    /** A paragraph whose further lines are indented differently from its first. */
    void hanging(int first, int further, String words) {
        unset.add(words);
        List<String> lines = wrap(words, WIDTH - first, WIDTH - further);
        for (int i = 0; i < lines.size(); i++) {
            text.append(" ".repeat(i == 0 ? first : further))
                    .append(lines.get(i))
                    .append('\n');
        }
    }

    /** A line as it is. */
    void line(String line) {
        text.append(line.stripTrailing()).append('\n');
        unset.add(line.stripTrailing());
    }

    /** The same text not yet set, a line a paragraph. */
    List<String> lines() {
        return List.copyOf(unset);
    }

    /** Rows of cells in columns as wide as their widest cell; a column whose heading begins with {@code >} is set flush right. */
    void table(int indent, List<List<String>> rows) {
        int columns = rows.get(0).size();
        int[] widths = new int[columns];
        for (List<String> row : rows) {
            for (int c = 0; c < columns; c++) {
                widths[c] = Math.max(widths[c], cell(rows, row, c).length());
            }
        }
        for (List<String> row : rows) {
            StringBuilder line = new StringBuilder(" ".repeat(indent));
            for (int c = 0; c < columns; c++) {
                String cell = cell(rows, row, c);
                String padding = " ".repeat(widths[c] - cell.length());
                boolean right = rows.get(0).get(c).startsWith(">");
                line.append(c == 0 ? "" : "  ").append(right ? padding + cell : cell + padding);
            }
            line(line.toString());
        }
    }

    private static String cell(List<List<String>> rows, List<String> row, int column) {
        String cell = row.get(column);
        return row == rows.get(0) && cell.startsWith(">") ? cell.substring(1) : cell;
    }

    @Override
    public String toString() {
        return text.toString();
    }

    private static List<String> wrap(String words, int firstWidth, int furtherWidth) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : List.of(words.split(" ", -1))) {
            int width = lines.isEmpty() ? firstWidth : furtherWidth;
            if (line.length() > 0 && line.length() + 1 + word.length() > width) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.length() == 0 ? "" : " ").append(word);
        }
        lines.add(line.toString());
        return lines;
    }
}
