package org.nestyear.app.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.nestyear.app.service.EmergeAnswer;
import org.nestyear.app.service.EmergeQuestion;
import org.nestyear.app.service.EmergeService;
import org.nestyear.app.service.PlanService;
import org.nestyear.app.service.Refusal;
import org.nestyear.app.service.Wording;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

@Command(
        name = "emerge",
        description =
                "Say when mason bees leave their cocoons after the fridge, under one temperature or in the weather.")
final class EmergeCommand implements Callable<Integer> {
    private final Surroundings surroundings;

    @Option(names = "--species", required = true, paramLabel = "NAME", description = "Latin name, in quotes.")
    String species = "";

    @Option(names = "--chill-days", required = true, paramLabel = "DAYS", description = "Days in the fridge.")
    String chillDays = "";

    @Option(
            names = "--chill-c",
            required = true,
            paramLabel = "TEMPERATURE",
            description = "Temperature of the fridge, such as 3, 3C or 37F.")
    String chill = "";

    @Option(
            names = "--at-c",
            paramLabel = "TEMPERATURE",
            description = "One temperature they are kept at afterwards, such as 20, 20C or 68F.")
    @Nullable
    String at;

    @Option(names = "--weather", paramLabel = "FILE", description = "Daily weather they are put out into.")
    @Nullable
    Path weather;

    @Option(names = "--out", paramLabel = "DATE", description = "The day they are put out, with --weather.")
    @Nullable
    String out;

    @Option(names = "--lat", paramLabel = "DEGREES", description = "Degrees north, with --weather.")
    @Nullable
    String latitude;

    @Mixin
    AnswerOptions options = new AnswerOptions();

    EmergeCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() {
        EmergeQuestion.Then then = then();
        int year = then instanceof EmergeQuestion.Weather given
                ? given.out().getYear()
                : surroundings.today().getYear();
        Wording words = new Wording(options.unitSystem(), year);
        EmergeService service = new EmergeService(PlanService.catalogue());
        EmergeAnswer answer = service.answer(new EmergeQuestion(
                service.species(species),
                Arguments.number("--chill-days", chillDays, 0, 400, "days"),
                Arguments.celsius("--chill-c", chill, -10, 15),
                then));
        options.print(surroundings, () -> EmergeJson.of(answer), () -> EmergeText.of(answer, words));
        return answer.isComplete() ? ExitCode.ANSWERED : ExitCode.PARTLY;
    }

    private EmergeQuestion.Then then() {
        if (at != null && weather == null && out == null) {
            return new EmergeQuestion.Steady(Arguments.celsius("--at-c", at, -10, 40));
        }
        if (at == null && weather != null && out != null && latitude != null) {
            LocalDate date = Arguments.date("--out", out);
            return new EmergeQuestion.Weather(weather, date, Arguments.latitude("--lat", latitude));
        }
        throw Refusal.usage(
                "it is not clear what the cocoons meet after the fridge; expected either --at-c TEMPERATURE, or"
                        + " --weather FILE, --out DATE and --lat DEGREES together.",
                weather != null && latitude == null ? "Maybe --lat is missing: the length of the day is needed." : "");
    }
}
