package org.nestyear.app.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.nestyear.app.service.EmergeService;
import org.nestyear.app.service.PlanService;
import org.nestyear.app.service.YearsAnswer;
import org.nestyear.app.service.YearsQuestion;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
        name = "years",
        description = "Say how a stock may go on, how likely it comes to a number, and what can be spared.")
final class YearsCommand implements Callable<Integer> {
    private static final int MOST = 1_000_000;

    private final Surroundings surroundings;

    @Parameters(
            arity = "0..1",
            paramLabel = "FILE",
            description = "A table with year and females_out, and daughters where known.")
    Path file = Path.of("");

    @Option(
            names = "--species",
            paramLabel = "NAME",
            description = "Latin name, in quotes (default: Osmia lignaria); for tunnels and settling.")
    String species = "Osmia lignaria";

    @Option(
            names = "--target",
            paramLabel = "N",
            description = "Female cocoons wanted (default: as many as there are now).")
    @Nullable
    String target;

    @Option(names = "--by", paramLabel = "YEAR", description = "In the spring of this year (default: in five years).")
    @Nullable
    String by;

    @Option(names = "--buy", paramLabel = "N", description = "Females bought each coming year (default 0).")
    String buy = "0";

    @Option(names = "--give", paramLabel = "N", description = "Females given away each coming year (default 0).")
    String give = "0";

    @Option(names = "--tunnels", paramLabel = "N", description = "Tunnels you have; no more can be filled.")
    @Nullable
    String tunnels;

    @Option(names = "--female-price", paramLabel = "P", description = "Price of a female cocoon, in your money.")
    @Nullable
    String femalePrice;

    @Option(names = "--tunnel-price", paramLabel = "P", description = "Price of a tunnel, in your money.")
    @Nullable
    String tunnelPrice;

    @Mixin
    KeptOptions kept = new KeptOptions();

    @Mixin
    AnswerOptions options = new AnswerOptions();

    YearsCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() {
        options.unitSystem();
        String site = kept.site(file);
        YearsQuestion question = new YearsQuestion(
                file,
                new EmergeService(PlanService.catalogue()).species(species),
                whole("--target", target, 1),
                by == null ? null : Arguments.year("--by", by),
                Amounts.whole("--buy", buy, 0, MOST),
                Amounts.whole("--give", give, 0, MOST),
                whole("--tunnels", tunnels, 1),
                price("--female-price", femalePrice),
                price("--tunnel-price", tunnelPrice));
        YearsAnswer answer = site == null
                ? YearsAnswer.of(question)
                : kept.answers(surroundings).years(site, question);
        options.print(surroundings, () -> YearsPrint.json(answer), () -> YearsPrint.text(answer));
        return ExitCode.ANSWERED;
    }

    private static @Nullable Integer whole(String option, @Nullable String text, int low) {
        return text == null ? null : Amounts.whole(option, text, low, MOST);
    }

    private static @Nullable Double price(String option, @Nullable String text) {
        return text == null ? null : Arguments.number(option, text, 0, MOST, "in your money");
    }
}
