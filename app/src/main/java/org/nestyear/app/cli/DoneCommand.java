package org.nestyear.app.cli;

import java.util.List;
import java.util.concurrent.Callable;
import org.nestyear.app.book.DoneAct;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

@Command(name = "done", description = "List what was done to the records, newest first.")
final class DoneCommand implements Callable<Integer> {
    private final Surroundings surroundings;

    @Option(names = "--most", paramLabel = "N", description = "How many at most (default: ${DEFAULT-VALUE}).")
    int most = 20;

    @Mixin
    RecordsOptions records = new RecordsOptions();

    @Mixin
    AnswerOptions options = new AnswerOptions();

    DoneCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() {
        List<DoneAct> acts = records.deskThatIsThere(surroundings).done(most);
        options.printPage(surroundings, () -> EntryJson.done(acts), () -> EntryPrint.done(acts));
        return ExitCode.ANSWERED;
    }
}
