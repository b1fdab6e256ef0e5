package org.nestyear.app.web;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import org.nestyear.app.service.PlanService;
import org.nestyear.app.service.SeasonDesk;
import org.nestyear.core.plan.Planner;
import org.nestyear.data.CatalogueFiles;

/** Starts the real server, with the real model, on a free port over a folder of its own. */
final class OwnServer {
    static final Clock CLOCK = Clock.fixed(Instant.parse("2015-03-10T12:00:00Z"), ZoneOffset.UTC);

    private OwnServer() {}

    static WebServer.Running start(Path home) {
        PlanService plans = new PlanService(CatalogueFiles.load(), Planner::plan);
        ServeOptions options = ServeOptions.parse("--port", "0", "--no-browser");
        return WebServer.launch(options, home, SeasonDesk.at(home, plans, CLOCK));
    }
}
