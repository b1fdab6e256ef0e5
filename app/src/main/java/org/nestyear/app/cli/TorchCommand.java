package org.nestyear.app.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.nestyear.app.service.PlanService;
import org.nestyear.app.service.TorchAnswer;
import org.nestyear.app.service.Wording;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
        name = "torch",
        description = "Say how many females nest, from the tunnels you saw occupied with a torch after dark.")
final class TorchCommand implements Callable<Integer> {
    private static final int MOST = 100_000;

    private final Surroundings surroundings;

    @Parameters(paramLabel = "FILE", description = "The season file (TOML); its weather up to the day of the count.")
    Path file = Path.of("");

    @Option(names = "--released", required = true, paramLabel = "DATE", description = "The day they were put out.")
    String released = "";

    @Option(
            names = "--counted",
            required = true,
            split = ",",
            paramLabel = "N",
            description = "Tunnels with a bee in them; for evenings close together one number each, such as 12,15.")
    List<String> counted = List.of();

    @Option(names = "--on", paramLabel = "DATE", description = "The day of the count (default: today).")
    @Nullable
    String on;

    @Mixin
    AnswerOptions options = new AnswerOptions();

    TorchCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() {
        LocalDate day = on == null ? surroundings.today() : Arguments.date("--on", on);
        List<Integer> counts = counted.stream()
                .map(text -> Amounts.whole("--counted", text, 0, MOST))
                .toList();
        TorchAnswer answer = PlanService.standard()
                .torch(file, surroundings.today(), day, Arguments.date("--released", released), counts);
        Wording words = new Wording(options.unitSystem(), day.getYear());
        options.printPage(surroundings, () -> TorchPrint.json(answer), () -> TorchPrint.text(answer, words));
        return ExitCode.ANSWERED;
    }
}
