package org.nestyear.app.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.nestyear.app.service.BloomAnswer;
import org.nestyear.app.service.BloomQuestion;
import org.nestyear.app.service.BloomService;
import org.nestyear.app.service.Wording;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

@Command(
        name = "bloom",
        description = "Fit bloom models to your own dates, keep the one that does best on years left out, and predict.")
final class BloomCommand implements Callable<Integer> {
    private final Surroundings surroundings;

    @Option(names = "--weather", required = true, paramLabel = "FILE", description = "Daily weather of the station.")
    Path weather = Path.of("");

    @Option(names = "--lat", required = true, paramLabel = "DEGREES", description = "Degrees north, -90 to 90.")
    String latitude = "";

    @Option(
            names = "--observed",
            required = true,
            paramLabel = "FILE",
            description = "Bloom dates: a column date, or year and day_of_year.")
    Path observed = Path.of("");

    @Option(
            names = "--predict",
            arity = "1..*",
            paramLabel = "YEAR",
            description = "Years to predict (default: every year of the weather without a date).")
    List<String> years = List.of();

    @Mixin
    AnswerOptions options = new AnswerOptions();

    BloomCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() {
        BloomAnswer answer = BloomService.answer(new BloomQuestion(
                weather,
                Arguments.latitude("--lat", latitude),
                observed,
                years.stream().map(year -> Arguments.year("--predict", year)).toList()));
        Wording words = new Wording(options.unitSystem(), answer.dayOne().getYear());
        options.print(surroundings, () -> BloomJson.of(answer), () -> BloomText.of(answer, words));
        return answer.isComplete() ? ExitCode.ANSWERED : ExitCode.PARTLY;
    }
}
