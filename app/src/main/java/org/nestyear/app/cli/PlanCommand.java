package org.nestyear.app.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.nestyear.app.service.PlanAnswer;
import org.nestyear.app.service.PlanRequest;
import org.nestyear.app.service.PlanService;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
        name = "plan",
        description = "Plan a season: when to put the bees out, what other dates cost, and what to do until then.")
final class PlanCommand implements Callable<Integer> {
    private final Surroundings surroundings;

    @Parameters(arity = "0..1", paramLabel = "FILE", description = "The season file (TOML).")
    Path file = Path.of("");

    @Mixin
    KeptOptions kept = new KeptOptions();

    @Option(names = "--species", paramLabel = "NAME", description = "With --site: Latin name, in quotes.")
    String species = "Osmia lignaria";

    @Option(
            names = "--year",
            paramLabel = "YEAR",
            description = "With --site: year they fly (default: that of the day).")
    @Nullable
    String year;

    @Mixin
    PlanOptions options = new PlanOptions();

    PlanCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() {
        options.check();
        String site = kept.site(file);
        PlanRequest request = options.request(surroundings);
        LocalDate today = request.today() == null ? request.clock() : request.today();
        PlanAnswer answer = site == null
                ? PlanService.standard().planFile(file, request)
                : kept.answers(surroundings)
                        .plan(site, species, year == null ? today.getYear() : Arguments.year("--year", year), request);
        surroundings.out().print(options.render(answer));
        if (site != null && options.isWholeText()) {
            surroundings
                    .out()
                    .print(LookBackPrint.ownSprings(kept.answers(surroundings)
                            .ownSprings(site, species, answer.plan().today().getYear())));
        }
        return ExitCode.ANSWERED;
    }
}
