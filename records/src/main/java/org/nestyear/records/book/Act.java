package org.nestyear.records.book;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * One thing somebody did to the records: all of its changes together, and undone together.
 *
 * @param id made by the application
 * @param at when
 * @param who the person
 * @param words what it was, for a list
 * @param entries how many entries it touched
 * @param undoes the act this one took back, or null
 * @param undoneBy the act that took this one back, or null
 */
public record Act(
        String id,
        Instant at,
        String who,
        String words,
        int entries,
        @Nullable String undoes,
        @Nullable String undoneBy) {}
