package org.nestyear.records.book;

import java.util.Map;

/** One thing done to one entry. */
public sealed interface Change {
    /** The table. */
    Sheet sheet();

    /** The entry's id. */
    String id();

    /**
     * A new entry.
     *
     * @param id made by the caller, so that sending it twice makes one entry
     * @param values what it tells, by column, in any spelling the column takes; blank is not told
     */
    record Add(Sheet sheet, String id, Map<String, String> values) implements Change {
        public Add {
            values = Map.copyOf(values);
        }
    }

    /**
     * Other values for an entry; the old ones are kept beside it.
     *
     * @param revision the revision the writer saw
     * @param values every value it shall tell from now on
     */
    record Correct(Sheet sheet, String id, int revision, Map<String, String> values) implements Change {
        public Correct {
            values = Map.copyOf(values);
        }
    }

    /**
     * An entry taken out; it can be brought back.
     *
     * @param revision the revision the writer saw
     */
    record Remove(Sheet sheet, String id, int revision) implements Change {}
}
