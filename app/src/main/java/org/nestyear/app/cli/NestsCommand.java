package org.nestyear.app.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import org.nestyear.app.service.NestDatesAnswer;
import org.nestyear.app.service.Refusal;
import org.nestyear.app.service.Wording;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
        name = "nests",
        description =
                "Say when the young in each nest have spun and are ready for the cold, by the day it was plugged.")
final class NestsCommand implements Callable<Integer> {
    private final Surroundings surroundings;

    @Parameters(paramLabel = "FILE", description = "The season file (TOML): its bees, place and past summers.")
    Path file = Path.of("");

    @Option(
            names = "--plugged",
            required = true,
            split = ",",
            paramLabel = "NEST=DATE",
            description = "The day a nest was plugged, such as a1=2015-05-02,a2=2015-05-20.")
    List<String> plugged = List.of();

    @Mixin
    AnswerOptions options = new AnswerOptions();

    NestsCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() {
        Map<String, LocalDate> days = new LinkedHashMap<>();
        for (String each : plugged) {
            int equals = each.lastIndexOf('=');
            String name = equals < 0 ? each.strip() : each.substring(0, equals).strip();
            if (equals < 0 || name.isEmpty()) {
                throw Refusal.usage(
                        "--plugged has \"" + each
                                + "\"; expected the name of a nest and its day, such as a1=2015-05-02.",
                        "");
            }
            if (days.put(
                            name,
                            Arguments.date(
                                    "--plugged", each.substring(equals + 1).strip()))
                    != null) {
                throw Refusal.usage("--plugged names the nest \"" + name + "\" twice; expected each once.", "");
            }
        }
        NestDatesAnswer answer = NestDatesAnswer.of(file, surroundings.today(), days);
        Wording words = new Wording(
                options.unitSystem(), days.values().iterator().next().getYear());
        options.printLaid(surroundings, () -> NestsPrint.json(answer), () -> NestsPrint.text(answer, words));
        return ExitCode.ANSWERED;
    }
}
