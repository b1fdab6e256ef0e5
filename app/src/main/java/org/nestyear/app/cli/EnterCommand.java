package org.nestyear.app.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.nestyear.app.book.RecordsDesk;
import org.nestyear.app.book.ShownEntry;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

@Command(name = "enter", description = "Write an entry down in the records.")
final class EnterCommand implements Callable<Integer> {
    private final Surroundings surroundings;

    @Parameters(index = "0", paramLabel = "TABLE", description = "The table, such as visit; see nestyear tables.")
    String table = "";

    @Parameters(
            index = "1..*",
            arity = "1..*",
            paramLabel = "COLUMN=VALUE",
            description = "What it tells; see nestyear tables TABLE.")
    List<String> values = new ArrayList<>();

    @Mixin
    RecordsOptions records = new RecordsOptions();

    @Mixin
    AnswerOptions options = new AnswerOptions();

    EnterCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() {
        ShownEntry entry =
                records.desk(surroundings).add(records.who(), table, RecordsDesk.newId(), KeptValues.of(values));
        options.printPage(
                surroundings, () -> EntryJson.written(entry), () -> EntryPrint.written("Written down", entry));
        return ExitCode.ANSWERED;
    }
}
