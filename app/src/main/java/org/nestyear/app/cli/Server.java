package org.nestyear.app.cli;

import java.io.PrintStream;

/** Shows the pages; kept apart so that no other command loads what it needs. */
public interface Server {
    /**
     * Serves until the program is stopped.
     *
     * @param words the words after {@code serve}
     * @return the exit code
     */
    int serve(String[] words, PrintStream out, PrintStream err);
}
