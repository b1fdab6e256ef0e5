package org.nestyear.app.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.nestyear.app.web.SumAnswer.Block;

/** Parts the lines of an answer into what is said first, why, and how well it is known. */
final class SumText {
    private static final String KNOWN = "How well this is known";
    private static final String ITEM = "- ";
    private static final String COLUMNS = " {2,}";
    /** A table of more columns than this has a head; numerical. */
    private static final int HEADLESS_COLUMNS = 2;

    private final List<String> lead;
    private final List<String> why;
    private final List<String> known;

    private SumText(List<String> lead, List<String> why, List<String> known) {
        this.lead = lead;
        this.why = why;
        this.known = known;
    }

    /**
     * @param lines as a command gives them
     * @param leads how many of them are the answer itself
     * @param tabled first words of the lines that the table of sources shows
     * @param labels first cells of the rows that the table of numbers shows
     */
    static SumText of(List<String> lines, int leads, Set<String> tabled, Set<String> labels) {
        List<String> kept = new ArrayList<>();
        boolean listed = false;
        for (String line : lines) {
            // What a first line that ends in a colon lists is in the table of numbers.
            listed = !line.isEmpty()
                    && (listed || (kept.size() == 1 && kept.get(0).endsWith(":") && !labels.isEmpty()));
            if (!listed && !tabled.contains(line.split(" ", 2)[0]) && !isTold(line, labels)) {
                kept.add(line.stripTrailing());
            }
        }
        int known = knownFrom(kept);
        int first = Math.min(leads, known);
        return new SumText(kept.subList(0, first), kept.subList(first, known), kept.subList(known, kept.size()));
    }

    private static boolean isTold(String line, Set<String> labels) {
        String first = line.split(COLUMNS, 2)[0];
        return isRow(line) && labels.stream().anyMatch(first::equalsIgnoreCase);
    }

    // Where the answer does not say it in so many words, its last section tells it.
    private static int knownFrom(List<String> lines) {
        int section = lines.size();
        for (int i = 0; i < lines.size(); i++) {
            String line = lines.get(i);
            if (line.regionMatches(true, 0, KNOWN, 0, KNOWN.length())) {
                return i;
            }
            if (line.isEmpty() && i + 1 < lines.size()) {
                section = i + 1;
            }
        }
        return section;
    }

    List<String> lead() {
        return lead.stream().map(SumText::sentenceCase).toList();
    }

    List<Block> why() {
        return blocks(why);
    }

    /** How well it is known, without the words that the page's heading says already. */
    List<Block> known() {
        List<String> lines = new ArrayList<>(known);
        if (!lines.isEmpty() && lines.get(0).regionMatches(true, 0, KNOWN, 0, KNOWN.length())) {
            String rest = lines.remove(0).substring(KNOWN.length()).replaceFirst("^:\\s*", "");
            if (!rest.isEmpty()) {
                lines.add(0, sentenceCase(rest));
            }
        }
        return blocks(lines);
    }

    private static List<Block> blocks(List<String> lines) {
        List<Block> blocks = new ArrayList<>();
        String heading = "";
        for (int i = 0; i < lines.size(); i++) {
            String line = lines.get(i);
            int end = i + 1;
            if (line.startsWith(ITEM)) {
                end = runEnd(lines, i, true);
                List<String> items = lines.subList(i, end).stream()
                        .map(item -> item.substring(ITEM.length()))
                        .toList();
                blocks.add(new Block(heading, "", items, List.of(), false));
                heading = "";
            } else if (isRow(line)) {
                end = runEnd(lines, i, false);
                List<List<String>> rows = rows(lines.subList(i, end));
                blocks.add(new Block(heading, "", List.of(), rows, rows.get(0).size() > HEADLESS_COLUMNS));
                heading = "";
            } else if (isHeading(lines, i)) {
                heading = sentenceCase(line.toLowerCase(Locale.ROOT).replaceFirst(":$", ""));
                heading = line.endsWith(":") ? line.substring(0, line.length() - 1) : heading;
            } else if (!line.isEmpty()) {
                blocks.add(new Block(heading, line.strip(), List.of(), List.of(), false));
                heading = "";
            }
            i = end - 1;
        }
        return blocks;
    }

    private static int runEnd(List<String> lines, int from, boolean items) {
        int end = from;
        while (end < lines.size() && (items ? lines.get(end).startsWith(ITEM) : isRow(lines.get(end)))) {
            end++;
        }
        return end;
    }

    private static boolean isRow(String line) {
        return line.strip().split(COLUMNS).length > 1;
    }

    private static List<List<String>> rows(List<String> lines) {
        int columns = lines.stream()
                .mapToInt(line -> line.strip().split(COLUMNS).length)
                .max()
                .orElse(1);
        List<List<String>> rows = new ArrayList<>();
        for (String line : lines) {
            List<String> cells = new ArrayList<>(List.of(line.strip().split(COLUMNS)));
            while (cells.size() < columns) {
                cells.add("");
            }
            rows.add(cells);
        }
        return rows;
    }

    // Capitals alone, or a short line that ends in a colon and has a list below it.
    private static boolean isHeading(List<String> lines, int i) {
        String line = lines.get(i);
        boolean capitals =
                line.length() > 1 && line.equals(line.toUpperCase(Locale.ROOT)) && line.matches("[\\p{Lu} ]+");
        boolean above =
                line.endsWith(":") && i + 1 < lines.size() && lines.get(i + 1).startsWith(ITEM);
        return capitals || (above && line.length() < 60);
    }

    private static String sentenceCase(String text) {
        return text.isEmpty() ? text : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }
}
