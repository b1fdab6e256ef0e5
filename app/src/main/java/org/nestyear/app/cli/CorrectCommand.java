package org.nestyear.app.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.nestyear.app.book.ShownEntry;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

@Command(name = "correct", description = "Correct an entry of the records; the old values are kept.")
final class CorrectCommand implements Callable<Integer> {
    private final Surroundings surroundings;

    @Parameters(index = "0", paramLabel = "TABLE", description = "The table, such as visit; see nestyear tables.")
    String table = "";

    @Parameters(index = "1", paramLabel = "ID", description = "The first four characters or more of the entry's id.")
    String id = "";

    @Parameters(
            index = "2..*",
            arity = "1..*",
            paramLabel = "COLUMN=VALUE",
            description = "New values; COLUMN= takes one away.")
    List<String> values = new ArrayList<>();

    @Mixin
    RecordsOptions records = new RecordsOptions();

    @Mixin
    AnswerOptions options = new AnswerOptions();

    CorrectCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() {
        ShownEntry entry =
                records.deskThatIsThere(surroundings).correct(records.who(), table, id, KeptValues.of(values));
        options.printPage(surroundings, () -> EntryJson.written(entry), () -> EntryPrint.written("Corrected", entry));
        return ExitCode.ANSWERED;
    }
}
