package org.nestyear.app.cli;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;

/**
 * One run of the command line on a fixed day.
 *
 * @param exit the exit code
 * @param out what went to standard output
 * @param err what went to standard error
 */
record Run(int exit, String out, String err) {
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2015-03-10T12:00:00Z"), ZoneOffset.UTC);
    // After the last day of the invented account.
    private static final Clock LATER = Clock.fixed(Instant.parse("2016-02-01T12:00:00Z"), ZoneOffset.UTC);

    static Run of(String... arguments) {
        return at(CLOCK, arguments);
    }

    /** The same on a day after the last one of the invented account. */
    static Run later(String... arguments) {
        return at(LATER, arguments);
    }

    private static Run at(Clock clock, String... arguments) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int exit;
        try (PrintStream answers = new PrintStream(out, true, StandardCharsets.UTF_8);
                PrintStream messages = new PrintStream(err, true, StandardCharsets.UTF_8)) {
            exit = CommandFace.run(arguments, answers, messages, clock, (words, o, e) -> {
                o.println("serving " + String.join(" ", words));
                return ExitCode.ANSWERED;
            });
        }
        return new Run(exit, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }
}
