package org.nestyear.app.cli;

import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.nestyear.app.service.EnemiesAnswer;
import org.nestyear.app.service.PartOfYear;
import org.nestyear.core.species.BeeKind;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
        name = "enemies",
        description =
                "List the enemies of brood, or tell of one: its looks, when it comes, what to do and never to do.")
final class EnemiesCommand implements Callable<Integer> {
    private final Surroundings surroundings;

    @Parameters(arity = "0..1", paramLabel = "NAME", description = "One of them, such as mites or Cacoxenus.")
    @Nullable
    String name;

    @Option(names = "--bees", paramLabel = "BEES", description = "Only those of mason or leafcutter bees.")
    @Nullable
    String bees;

    @Option(names = "--when", paramLabel = "SEASON", description = "Only those of spring, summer, autumn or winter.")
    @Nullable
    String when;

    @Mixin
    AnswerOptions options = new AnswerOptions();

    EnemiesCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() {
        options.unitSystem();
        BeeKind whose = Arguments.word("--bees", bees, BeeKind.values(), BeeKind::word);
        PartOfYear part = Arguments.word("--when", when, PartOfYear.values(), PartOfYear::word);
        EnemiesAnswer answer = EnemiesAnswer.of(name, whose == null ? null : whose.word(), part);
        options.printLaid(surroundings, () -> EnemiesPrint.json(answer), () -> EnemiesPrint.text(answer));
        return ExitCode.ANSWERED;
    }
}
