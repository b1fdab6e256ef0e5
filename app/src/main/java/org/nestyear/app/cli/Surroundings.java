package org.nestyear.app.cli;

import java.io.PrintStream;
import java.time.Clock;
import java.time.LocalDate;

/**
 * What a command touches of the world: where answers and messages go, and what day it is.
 *
 * @param out answers only
 * @param err messages
 */
record Surroundings(PrintStream out, PrintStream err, Clock clock) {
    /** Today by the clock. */
    LocalDate today() {
        return LocalDate.now(clock);
    }
}
