package org.nestyear.app.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Unmatched;

@Command(name = "serve", description = "Show the pages in a browser on this computer; see serve --help.")
final class ServeCommand implements Callable<Integer> {
    private final Surroundings surroundings;
    private final Server server;

    @Unmatched
    List<String> rest = new ArrayList<>();

    ServeCommand(Surroundings surroundings, Server server) {
        this.surroundings = surroundings;
        this.server = server;
    }

    @Override
    public Integer call() {
        return server.serve(rest.toArray(String[]::new), surroundings.out(), surroundings.err());
    }
}
