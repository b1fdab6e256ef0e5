package org.nestyear.app.web;

import java.util.List;

/**
 * Every number used.
 *
 * @param count how many there are
 * @param kinds how many of each kind, in words
 * @param tables by subject
 * @param words tables of words, such as the plants
 * @param publications the sources behind them
 */
public record SourcesView(
        PageHead head, int count, String kinds, List<Table> tables, List<Words> words, List<Publication> publications) {
    public SourcesView {
        tables = List.copyOf(tables);
        words = List.copyOf(words);
        publications = List.copyOf(publications);
    }

    /**
     * Numbers of one subject.
     *
     * @param id its place on the page
     */
    public record Table(String id, String title, List<BasisLine> lines) {
        public Table {
            lines = List.copyOf(lines);
        }
    }

    /** A table of words. */
    public record Words(String id, String title, List<String> head, List<List<String>> rows) {
        public Words {
            head = List.copyOf(head);
            rows = List.copyOf(rows);
        }
    }

    /**
     * A source.
     *
     * @param address where to find it, or empty
     * @param uses how many numbers come from it
     */
    public record Publication(String citation, String address, String uses) {}
}
