package org.nestyear.app.cli;

import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.nestyear.app.book.TableWords;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

@Command(name = "tables", description = "List the tables of the records, or what the columns of one may hold.")
final class TablesCommand implements Callable<Integer> {
    private final Surroundings surroundings;

    @Parameters(arity = "0..1", paramLabel = "TABLE", description = "One of the tables, such as visit.")
    @Nullable
    String table;

    @Mixin
    AnswerOptions options = new AnswerOptions();

    TablesCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() {
        if (table == null) {
            options.printPage(surroundings, () -> EntryJson.tables(TableWords.all()), EntryPrint::tables);
        } else {
            TableWords words = TableWords.named(table);
            options.printPage(surroundings, () -> EntryJson.table(words), () -> EntryPrint.table(words));
        }
        return ExitCode.ANSWERED;
    }
}
