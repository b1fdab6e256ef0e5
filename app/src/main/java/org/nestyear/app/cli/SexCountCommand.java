package org.nestyear.app.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.nestyear.app.service.EmergeService;
import org.nestyear.app.service.PlanService;
import org.nestyear.app.service.SexCountAnswer;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(name = "sex-count", description = "Say how many cocoons of a lot are female, by weight, width or sieve.")
final class SexCountCommand implements Callable<Integer> {
    private final Surroundings surroundings;

    @Parameters(
            paramLabel = "FILE",
            description = "A table with weight_mg or size_mm, a line a cocoon, or with sieve_mm and count.")
    Path file = Path.of("");

    @Option(names = "--species", required = true, paramLabel = "NAME", description = "Latin name, in quotes.")
    String species = "";

    @Option(names = "--mixed", description = "Several kinds or places are in the lot.")
    boolean mixed;

    @Mixin
    AnswerOptions options = new AnswerOptions();

    SexCountCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() {
        options.unitSystem();
        SexCountAnswer answer =
                SexCountAnswer.of(file, new EmergeService(PlanService.catalogue()).species(species), mixed);
        options.print(surroundings, () -> SexCountPrint.json(answer), () -> SexCountPrint.text(answer));
        return ExitCode.ANSWERED;
    }
}
