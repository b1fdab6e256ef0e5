package org.nestyear.app.cli;

import java.util.concurrent.Callable;
import org.nestyear.app.service.ChillAnswer;
import org.nestyear.app.service.Refusal;
import org.nestyear.app.service.Wording;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

@Command(
        name = "chill",
        description = "Sum up the cold and the warmth that fruit trees count, over a table of daily weather.")
final class ChillCommand implements Callable<Integer> {
    private final Surroundings surroundings;

    @Mixin
    DaysOfWeather days = new DaysOfWeather();

    @Option(names = "--lat", required = true, paramLabel = "DEGREES", description = "Degrees north, -90 to 90.")
    String latitude = "";

    @Mixin
    AnswerOptions options = new AnswerOptions();

    ChillCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() {
        if (!days.isWhole()) {
            throw Refusal.usage(
                    "it is not clear which days are summed; expected --weather FILE, --from DATE and --to DATE.", "");
        }
        ChillAnswer answer = ChillAnswer.of(days.file(), Arguments.latitude("--lat", latitude), days.from(), days.to());
        Wording words = new Wording(options.unitSystem(), surroundings.today().getYear());
        options.print(surroundings, () -> ChillPrint.json(answer), () -> ChillPrint.text(answer, words));
        return ExitCode.ANSWERED;
    }
}
