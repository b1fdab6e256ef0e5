package org.nestyear.app.cli;

import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.nestyear.app.book.EntriesQuestion;
import org.nestyear.app.book.RecordsDesk;
import org.nestyear.app.book.ShownEntry;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
        name = "entries",
        description = "Show the entries of a table, newest first, or one with all that was corrected in it.")
final class EntriesCommand implements Callable<Integer> {
    private final Surroundings surroundings;

    @Parameters(index = "0", paramLabel = "TABLE", description = "The table, such as visit; see nestyear tables.")
    String table = "";

    @Parameters(index = "1", arity = "0..1", paramLabel = "ID", description = "The first characters of one entry's id.")
    @Nullable
    String id;

    @Option(names = "--site", paramLabel = "NAME", description = "Only those of this site.")
    String site = "";

    @Option(names = "--year", paramLabel = "YEAR", description = "Only those of this year.")
    @Nullable
    String year;

    @Option(names = "--most", paramLabel = "N", description = "How many at most (default: ${DEFAULT-VALUE}).")
    int most = 50;

    @Mixin
    RecordsOptions records = new RecordsOptions();

    @Mixin
    AnswerOptions options = new AnswerOptions();

    EntriesCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() {
        RecordsDesk desk = records.deskThatIsThere(surroundings);
        if (id != null) {
            ShownEntry entry = desk.show(table, id);
            options.printPage(surroundings, () -> EntryJson.written(entry), () -> EntryPrint.one(entry));
            return ExitCode.ANSWERED;
        }
        int of = year == null ? 0 : Amounts.whole("--year", year, 1900, 2199);
        EntriesQuestion question = new EntriesQuestion(table, site, of, most, 0);
        int all = desk.count(question);
        List<ShownEntry> entries = desk.list(question);
        options.printPage(
                surroundings, () -> EntryJson.entries(entries, all), () -> EntryPrint.entries(table, entries, all));
        return ExitCode.ANSWERED;
    }
}
