package org.nestyear.app.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.nestyear.app.service.PlanService;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

@Command(
        name = "plan",
        description = "Plan a season: when to put the bees out, what other dates cost, and what to do until then.")
final class PlanCommand implements Callable<Integer> {
    private final Surroundings surroundings;

    @Parameters(paramLabel = "FILE", description = "The season file (TOML).")
    Path file = Path.of("");

    @Mixin
    PlanOptions options = new PlanOptions();

    PlanCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() {
        options.check();
        surroundings.out().print(options.render(PlanService.standard().planFile(file, options.request(surroundings))));
        return ExitCode.ANSWERED;
    }
}
