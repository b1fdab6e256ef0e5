package org.nestyear.app.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.concurrent.Callable;
import org.nestyear.app.service.FacingAnswer;
import org.nestyear.app.service.Wording;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
        name = "facing",
        description = "Rank the ways a house front may look by the morning sun it gets over the skyline.")
final class FacingCommand implements Callable<Integer> {
    private final Surroundings surroundings;

    @Parameters(
            paramLabel = "FILE",
            description = "The season file (TOML), whose [site] has the place and the horizon.")
    Path file = Path.of("");

    @Option(
            names = "--on",
            arity = "1..*",
            paramLabel = "DATE",
            description =
                    "Days to look at (default: the first of April, May and June; October to December in the south).")
    List<String> on = List.of();

    @Mixin
    AnswerOptions options = new AnswerOptions();

    FacingCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() {
        List<LocalDate> dates =
                on.stream().map(text -> Arguments.date("--on", text)).toList();
        FacingAnswer answer = FacingAnswer.of(file, surroundings.today(), dates);
        Wording words = new Wording(options.unitSystem(), answer.dates().get(0).getYear());
        options.printPage(surroundings, () -> FacingPrint.json(answer), () -> FacingPrint.text(answer, words));
        return ExitCode.ANSWERED;
    }
}
