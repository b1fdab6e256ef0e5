package org.nestyear.app.book;

import java.time.Instant;
import org.nestyear.records.book.Act;

/**
 * Something somebody did to the records.
 *
 * @param id made by the program
 * @param at when
 * @param who by whom
 * @param words what it was
 * @param entries how many entries it touched
 * @param takenBack whether it was taken back
 */
public record DoneAct(String id, Instant at, String who, String words, int entries, boolean takenBack) {
    static DoneAct of(Act act) {
        return new DoneAct(act.id(), act.at(), act.who(), act.words(), act.entries(), act.undoneBy() != null);
    }
}
