package org.nestyear.app.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.nestyear.app.service.TrendAnswer;
import org.nestyear.app.service.TrendQuestion;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(name = "trend", description = "Say how a stock grew over the years, and how likely it comes to a number.")
final class TrendCommand implements Callable<Integer> {
    private static final double MOST = 1e9;

    private final Surroundings surroundings;

    @Parameters(paramLabel = "FILE", description = "A table with the columns year and count.")
    Path file = Path.of("");

    @Option(
            names = "--target",
            paramLabel = "N",
            description = "Number to come to, from below or from above (default: twice the last count).")
    @Nullable
    String target;

    @Option(names = "--within", paramLabel = "YEARS", description = "Within so many years (default 10).")
    String within = "10";

    @Option(names = "--level", paramLabel = "L", description = "Confidence, such as 95 (default), 90%% or 0.99.")
    String level = "95";

    @Mixin
    AnswerOptions options = new AnswerOptions();

    TrendCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() {
        TrendAnswer answer = TrendAnswer.of(new TrendQuestion(
                file,
                target == null ? null : Arguments.number("--target", target, 1, MOST, "bees"),
                Arguments.number("--within", within, 1, 500, "years"),
                Amounts.share("--level", level)));
        options.unitSystem();
        options.print(surroundings, () -> TrendJson.of(answer), () -> TrendText.of(answer));
        return ExitCode.ANSWERED;
    }
}
