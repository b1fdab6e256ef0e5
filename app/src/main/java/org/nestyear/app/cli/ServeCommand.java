package org.nestyear.app.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.nestyear.app.web.WebServer;
import picocli.CommandLine.Command;
import picocli.CommandLine.Unmatched;

/** The one command that starts the web server, and so the only class here that leads to its libraries. */
@Command(name = "serve", description = "Show the pages in a browser on this computer; see serve --help.")
final class ServeCommand implements Callable<Integer> {
    private final Surroundings surroundings;

    @Unmatched
    List<String> rest = new ArrayList<>();

    ServeCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() {
        return serve(rest.toArray(String[]::new), surroundings);
    }

    /** Serves with these words, which the server reads itself. */
    static int serve(String[] words, Surroundings surroundings) {
        return WebServer.start(words, surroundings.out(), surroundings.err());
    }
}
