package org.nestyear.app.cli;

import java.util.concurrent.Callable;
import org.nestyear.app.book.SpringThatWas;
import org.nestyear.app.service.Wording;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

@Command(
        name = "spring",
        description = "Look back on a spring: what was forecast, what happened, and what one change would have gained.")
final class SpringCommand implements Callable<Integer> {
    private final Surroundings surroundings;

    @Option(names = "--site", required = true, paramLabel = "NAME", description = "The site.")
    String site = "";

    @Option(names = "--species", paramLabel = "NAME", description = "Latin name, in quotes (default: Osmia lignaria).")
    String species = "Osmia lignaria";

    @Option(names = "--year", required = true, paramLabel = "YEAR", description = "The spring.")
    String year = "";

    @Mixin
    RecordsOptions records = new RecordsOptions();

    @Mixin
    AnswerOptions options = new AnswerOptions();

    SpringCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() {
        int spring = Arguments.year("--year", year);
        SpringThatWas answer =
                SpringThatWas.of(records.deskThatIsThere(surroundings), records.folder(), site, species, spring);
        Wording words = new Wording(options.unitSystem(), spring);
        options.printPage(surroundings, () -> LookBackPrint.json(answer), () -> LookBackPrint.text(answer, words));
        return ExitCode.ANSWERED;
    }
}
