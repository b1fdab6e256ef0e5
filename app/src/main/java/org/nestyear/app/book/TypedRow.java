package org.nestyear.app.book;

import java.util.LinkedHashMap;
import java.util.Map;

/**
 * An entry as somebody typed it.
 *
 * @param id made by the program before it was sent
 * @param revision the revision the writer saw, or 0 for a new entry
 * @param typed what stands in each field, with names in place of ids; blank is not told
 */
public record TypedRow(String id, int revision, Map<String, String> typed) {
    public TypedRow {
        typed = Map.copyOf(new LinkedHashMap<>(typed));
    }
}
