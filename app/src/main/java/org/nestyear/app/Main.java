package org.nestyear.app;

import java.io.BufferedOutputStream;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.ZoneId;
import org.nestyear.app.cli.CommandFace;
import org.nestyear.app.cli.CommandSums;
import org.nestyear.app.web.WebServer;

/** Starts the command line. */
public final class Main {
    private Main() {}

    /** Runs one command; its words are UTF-8 whatever the machine's own character set. */
    public static void main(String[] arguments) {
        PrintStream out = stream(FileDescriptor.out);
        PrintStream err = stream(FileDescriptor.err);
        Clock clock = Clock.system(ZoneId.systemDefault());
        int exit = CommandFace.run(
                arguments,
                out,
                err,
                clock,
                // A lambda and no method reference, which would load the server's libraries for every command.
                (words, answers, messages) -> WebServer.start(words, new CommandSums(clock), answers, messages));
        out.flush();
        err.flush();
        System.exit(exit);
    }

    private static PrintStream stream(FileDescriptor descriptor) {
        return new PrintStream(
                new BufferedOutputStream(new FileOutputStream(descriptor)), false, StandardCharsets.UTF_8);
    }
}
