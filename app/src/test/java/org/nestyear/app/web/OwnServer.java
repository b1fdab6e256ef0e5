package org.nestyear.app.web;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import org.nestyear.app.book.BookDesk;
import org.nestyear.app.cli.CommandSums;
import org.nestyear.app.service.SeasonDesk;

/** Starts the real server, with the real model, on a free port over a folder of its own. */
final class OwnServer {
    static final Clock CLOCK = Clock.fixed(Instant.parse("2015-03-10T12:00:00Z"), ZoneOffset.UTC);

    private OwnServer() {}

    static WebServer.Running start(Path home) {
        return start(home, CLOCK);
    }

    /** The same on another day. */
    static WebServer.Running start(Path home, Clock clock) {
        ServeOptions options = ServeOptions.parse("--port", "0", "--no-browser");
        return WebServer.launch(
                options, home, SeasonDesk.at(home, clock), new CommandSums(clock), BookDesk.at(home, clock));
    }
}
