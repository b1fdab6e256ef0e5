package org.nestyear.data;

import java.util.List;

/**
 * A table of the catalogue that holds words and not one number a row.
 *
 * @param name of its file
 * @param head names of the columns
 * @param rows cells as the file has them, sources in full
 */
public record WordTable(String name, List<String> head, List<List<String>> rows) {
    public WordTable {
        head = List.copyOf(head);
        rows = List.copyOf(rows);
    }
}
