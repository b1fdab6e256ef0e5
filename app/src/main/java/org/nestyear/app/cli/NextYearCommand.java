package org.nestyear.app.cli;

import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.nestyear.app.book.NextYear;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

@Command(
        name = "next-year",
        description = "Make next year's batch out of the nests opened this year, with losses and growth.")
final class NextYearCommand implements Callable<Integer> {
    private static final int MOST = 1_000_000;

    private final Surroundings surroundings;

    @Option(names = "--site", required = true, paramLabel = "NAME", description = "The site.")
    String site = "";

    @Option(names = "--species", paramLabel = "NAME", description = "Latin name, in quotes (default: Osmia lignaria).")
    String species = "Osmia lignaria";

    @Option(names = "--year", required = true, paramLabel = "YEAR", description = "The year the nests were built.")
    String year = "";

    @Option(names = "--females", paramLabel = "N", description = "Females among the living (default: published share).")
    @Nullable
    String females;

    @Option(
            names = "--wintered",
            paramLabel = "WHERE",
            description = "fridge, shed, outdoors or unopened, if it is known already.")
    String wintered = "";

    @Option(names = "--dry-run", description = "Only say what would be written.")
    boolean dryRun;

    @Mixin
    RecordsOptions records = new RecordsOptions();

    @Mixin
    AnswerOptions options = new AnswerOptions();

    NextYearCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() {
        NextYear answer = NextYear.of(
                records.deskThatIsThere(surroundings),
                records.who(),
                new NextYear.Question(
                        site,
                        species,
                        Arguments.year("--year", year),
                        females == null ? -1 : Amounts.whole("--females", females, 0, MOST),
                        wintered),
                !dryRun);
        options.printPage(surroundings, () -> LookBackPrint.json(answer), () -> LookBackPrint.text(answer));
        return ExitCode.ANSWERED;
    }
}
