package org.nestyear.app.web;

import java.util.List;

/**
 * Every number used.
 *
 * @param count how many there are
 * @param kinds how many of each kind, in words
 * @param tables by subject
 * @param publications the sources behind them
 */
public record SourcesView(PageHead head, int count, String kinds, List<Table> tables, List<Publication> publications) {
    public SourcesView {
        tables = List.copyOf(tables);
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

    /**
     * A source.
     *
     * @param address where to find it, or empty
     * @param uses how many numbers come from it
     */
    public record Publication(String citation, String address, String uses) {}
}
