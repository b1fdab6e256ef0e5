package org.nestyear.app.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.nestyear.app.service.FacingAnswer;
import org.nestyear.app.service.FacingQuestion;
import org.nestyear.app.service.Wording;
import org.nestyear.core.species.BeeKind;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
        name = "facing",
        description = "Rank the ways a house front may look by morning sun over the skyline and heat in the tunnels.")
final class FacingCommand implements Callable<Integer> {
    private static final double MOST_EXCESS_C = 10;

    private final Surroundings surroundings;

    @Parameters(
            arity = "0..1",
            paramLabel = "FILE",
            description = "The season file (TOML), whose [site] has the place and the horizon.")
    @Nullable
    Path file;

    @Mixin
    HouseOptions house = new HouseOptions();

    @Option(
            names = "--on",
            arity = "1..*",
            paramLabel = "DATE",
            description = "Days to take the sun from (default: every week of the bees' flight).")
    List<String> on = List.of();

    @Option(
            names = "--for",
            paramLabel = "BEES",
            description = "mason or leafcutter (default: the bees of the first [[batch]], or mason).")
    @Nullable
    String bees;

    @Option(
            names = "--excess-c",
            paramLabel = "C",
            description = "How much warmer than the air your tunnels get for each 100 W/m² on the front, °C.")
    @Nullable
    String excess;

    @Mixin
    AnswerOptions options = new AnswerOptions();

    FacingCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    private FacingQuestion.House house() {
        if (file != null && house.isUntold()) {
            return new FacingQuestion.OfSeason(file);
        }
        if (file == null) {
            return house.told();
        }
        throw HouseOptions.unclear();
    }

    @Override
    public Integer call() {
        List<LocalDate> dates =
                on.stream().map(text -> Arguments.date("--on", text)).toList();
        FacingAnswer answer = FacingAnswer.of(new FacingQuestion(
                house(),
                surroundings.today(),
                dates,
                Arguments.word("--for", bees, BeeKind.values(), BeeKind::word),
                excess == null ? null : Arguments.number("--excess-c", excess, 0, MOST_EXCESS_C, "°C")));
        Wording words =
                new Wording(options.unitSystem(), answer.weeks().get(0).from().getYear());
        options.printLaid(surroundings, () -> FacingPrint.json(answer), () -> FacingPrint.text(answer, words));
        return ExitCode.ANSWERED;
    }
}
