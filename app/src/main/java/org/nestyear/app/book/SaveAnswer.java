package org.nestyear.app.book;

import java.util.List;
import java.util.Optional;

/**
 * What came of writing rows together: all of them stand, or none.
 *
 * @param act what was done; empty where nothing was written or nothing had changed
 * @param faults what cannot stand; empty where all is well
 * @param changed entries that somebody else changed since they were seen
 */
public record SaveAnswer(Optional<DoneAct> act, List<RowFault> faults, List<ChangedRow> changed) {
    /** Nothing was asked for yet. */
    public static final SaveAnswer NOTHING = new SaveAnswer(Optional.empty(), List.of(), List.of());

    public SaveAnswer {
        faults = List.copyOf(faults);
        changed = List.copyOf(changed);
    }

    /**
     * Something that cannot stand.
     *
     * @param row which of the rows, from 0
     * @param field the field, or empty for the row as a whole
     * @param sentence what is wrong and what was expected
     */
    public record RowFault(int row, String field, String sentence) {}

    /**
     * An entry that is not as the writer saw it.
     *
     * @param row which of the rows, from 0
     * @param sentence who changed it, or that it was taken out
     * @param now how it stands now
     */
    public record ChangedRow(int row, String sentence, ShownEntry now) {}

    /** Whether what was typed stands now. */
    public boolean good() {
        return faults.isEmpty() && changed.isEmpty();
    }
}
