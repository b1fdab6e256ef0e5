package org.nestyear.app.cli;

import java.io.PrintStream;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a command touches of the world: where answers and messages go, and what day it is.
 *
 * @param out answers only
 * @param err messages
 * @param ear takes the answer instead of {@code out}, or null
 */
record Surroundings(
        PrintStream out,
        PrintStream err,
        Clock clock,
        @Nullable Ear ear) {
    /** Takes an answer as it is before it is set for a terminal. */
    interface Ear {
        /**
         * Takes it.
         *
         * @param lines the answer in words
         * @param json the same answer as one object
         */
        void hear(List<String> lines, String json);
    }

    /** Today by the clock. */
    LocalDate today() {
        return LocalDate.now(clock);
    }
}
