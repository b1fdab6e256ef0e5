package org.nestyear.app.cli;

import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.nestyear.app.service.DegreeDaysAnswer;
import org.nestyear.app.service.DegreeDaysQuestion;
import org.nestyear.app.service.Refusal;
import org.nestyear.app.service.Wording;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

@Command(name = "degree-days", description = "Sum up warmth above a base, of one day or over a table of daily weather.")
final class DegreeDaysCommand implements Callable<Integer> {
    private final Surroundings surroundings;

    @Option(names = "--min", paramLabel = "TEMPERATURE", description = "The lowest temperature of one day.")
    @Nullable
    String min;

    @Option(names = "--max", paramLabel = "TEMPERATURE", description = "The highest temperature of that day.")
    @Nullable
    String max;

    @Option(
            names = "--base",
            required = true,
            paramLabel = "TEMPERATURE",
            description = "Warmth counts above this, such as 5, 5C or 41F.")
    String base = "";

    @Option(names = "--cap", paramLabel = "TEMPERATURE", description = "Warmth above this counts as this.")
    @Nullable
    String cap;

    @Mixin
    DaysOfWeather days = new DaysOfWeather();

    @Mixin
    AnswerOptions options = new AnswerOptions();

    DegreeDaysCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() {
        double baseC = Arguments.celsius("--base", base, -30, 40);
        Double capC = cap == null ? null : Double.valueOf(Arguments.celsius("--cap", cap, -30, 60));
        if (capC != null && capC <= baseC) {
            throw Refusal.usage(
                    "--cap is " + cap + ", not above --base " + base + "; expected a cap above the base.", "");
        }
        DegreeDaysAnswer answer = DegreeDaysAnswer.of(new DegreeDaysQuestion(baseC, capC, over()));
        Wording words = new Wording(options.unitSystem(), surroundings.today().getYear());
        options.print(surroundings, () -> DegreeDaysPrint.json(answer), () -> DegreeDaysPrint.text(answer, words));
        return ExitCode.ANSWERED;
    }

    private DegreeDaysQuestion.Over over() {
        if (min != null && max != null && days.isUntold()) {
            double minC = Arguments.celsius("--min", min, -60, 60);
            double maxC = Arguments.celsius("--max", max, -60, 60);
            if (maxC < minC) {
                throw Refusal.usage(
                        "--max is " + max + ", below --min " + min + "; expected the highest temperature of the day.",
                        "Maybe the two are swapped.");
            }
            return new DegreeDaysQuestion.OneDay(minC, maxC);
        }
        if (min == null && max == null && days.isWhole()) {
            return new DegreeDaysQuestion.Table(days.file(), days.from(), days.to());
        }
        throw Refusal.usage(
                "it is not clear which days are summed; expected either --min and --max of one day, or --weather FILE,"
                        + " --from DATE and --to DATE together.",
                "");
    }
}
