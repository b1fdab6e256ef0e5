package org.nestyear.app.cli;

import java.nio.file.Path;
import java.util.Objects;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.nestyear.app.service.LossesAnswer;
import org.nestyear.app.service.LossesQuestion;
import org.nestyear.app.service.Wording;
import org.nestyear.core.losses.Cause;
import org.nestyear.core.losses.KillValues;
import org.nestyear.core.species.BeeKind;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
        name = "losses",
        description = "Say what opened nests lost, by cause, how sure that is, how groups compare, and what to do.")
final class LossesCommand implements Callable<Integer> {
    private final Surroundings surroundings;

    @Parameters(
            arity = "0..1",
            paramLabel = "FILE",
            description = "A tally: a line a nest, with cells and a column for each cause.")
    Path file = Path.of("");

    @Option(names = "--bees", paramLabel = "BEES", description = "mason (default) or leafcutter.")
    @Nullable
    String bees;

    @Option(names = "--bought", description = "The bees came from elsewhere this year.")
    boolean bought;

    @Option(names = "--cause", paramLabel = "CAUSE", description = "Compare by this cause (default: all losses).")
    @Nullable
    String cause;

    @Option(names = "--level", paramLabel = "C", description = "Coverage of the limits, such as 95 (default) or 0.9.")
    String level = "95";

    @Option(
            names = "--rates",
            paramLabel = "BASE",
            description = "Also what each cause takes alone, with its k; 10 or e is the base of the logarithm.")
    @Nullable
    String rates;

    @Mixin
    KeptOptions kept = new KeptOptions();

    @Option(names = "--species", paramLabel = "NAME", description = "With --site: Latin name, in quotes.")
    @Nullable
    String species;

    @Option(
            names = "--year",
            paramLabel = "YEAR",
            description = "With --site: year the nests were built (default: all).")
    @Nullable
    String year;

    @Mixin
    AnswerOptions options = new AnswerOptions();

    LossesCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() {
        BeeKind whose = Objects.requireNonNullElse(
                Arguments.word("--bees", bees, BeeKind.values(), BeeKind::word), BeeKind.MASON);
        String site = kept.site(file);
        LossesQuestion question = new LossesQuestion(
                file,
                whose,
                bought,
                Amounts.share("--level", level),
                Arguments.word("--cause", cause, Cause.values(), Cause::word),
                Arguments.word("--rates", rates, KillValues.Base.values(), KillValues.Base::word));
        LossesAnswer answer = site == null
                ? LossesAnswer.of(question)
                : kept.answers(surroundings)
                        .losses(site, bee(whose), year == null ? 0 : Arguments.year("--year", year), question);
        Wording words = new Wording(options.unitSystem(), surroundings.today().getYear());
        options.printLaid(surroundings, () -> LossesJson.of(answer, words), () -> LossesText.of(answer, words));
        return ExitCode.ANSWERED;
    }

    private String bee(BeeKind whose) {
        return Objects.requireNonNullElse(species, whose == BeeKind.MASON ? "Osmia lignaria" : "Megachile rotundata");
    }
}
