package org.nestyear.app.cli;

import java.util.concurrent.Callable;
import org.nestyear.app.book.ShownEntry;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

@Command(name = "take-out", description = "Take an entry out of the records; undo brings it back.")
final class TakeOutCommand implements Callable<Integer> {
    private final Surroundings surroundings;

    @Parameters(index = "0", paramLabel = "TABLE", description = "The table, such as visit; see nestyear tables.")
    String table = "";

    @Parameters(index = "1", paramLabel = "ID", description = "The first four characters or more of the entry's id.")
    String id = "";

    @Mixin
    RecordsOptions records = new RecordsOptions();

    @Mixin
    AnswerOptions options = new AnswerOptions();

    TakeOutCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() {
        ShownEntry entry = records.deskThatIsThere(surroundings).remove(records.who(), table, id);
        options.printPage(surroundings, () -> EntryJson.written(entry), () -> EntryPrint.written("Taken out", entry));
        return ExitCode.ANSWERED;
    }
}
