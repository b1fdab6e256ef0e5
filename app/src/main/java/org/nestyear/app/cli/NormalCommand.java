package org.nestyear.app.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.nestyear.app.service.PlanService;
import org.nestyear.app.service.Refusal;
import org.nestyear.app.service.SightAnswer;
import org.nestyear.app.service.Wording;
import org.nestyear.core.release.Seen;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
        name = "normal",
        description = "Say whether what you see after putting cocoons out is normal, and what else to look for.")
final class NormalCommand implements Callable<Integer> {
    private final Surroundings surroundings;

    @Parameters(paramLabel = "FILE", description = "The season file (TOML); its weather up to the day asked about.")
    Path file = Path.of("");

    @Option(names = "--released", required = true, paramLabel = "DATE", description = "The day they were put out.")
    String released = "";

    @Option(
            names = "--saw",
            required = true,
            paramLabel = "WHAT",
            description = "nothing (no bee yet), males (no female yet), or females (but nothing nests).")
    String saw = "";

    @Option(names = "--on", paramLabel = "DATE", description = "The day asked about (default: today).")
    @Nullable
    String on;

    @Mixin
    AnswerOptions options = new AnswerOptions();

    NormalCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() {
        LocalDate day = on == null ? surroundings.today() : Arguments.date("--on", on);
        Seen seen = Arguments.word("--saw", saw, Seen.values(), Seen::word);
        if (seen == null) {
            throw Refusal.usage("--saw is missing; expected nothing, males or females.", "");
        }
        SightAnswer answer = PlanService.standard()
                .sighting(file, surroundings.today(), day, Arguments.date("--released", released), seen);
        Wording words = new Wording(options.unitSystem(), day.getYear());
        options.printPage(surroundings, () -> NormalPrint.json(answer, words), () -> NormalPrint.text(answer, words));
        return ExitCode.ANSWERED;
    }
}
