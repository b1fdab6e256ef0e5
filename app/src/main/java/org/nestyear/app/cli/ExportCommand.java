package org.nestyear.app.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.nestyear.app.book.AccountArchive;
import org.nestyear.app.book.RecordsDesk;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(name = "export", description = "Write the whole account as one archive, or one table as CSV.")
final class ExportCommand implements Callable<Integer> {
    private static final String ARCHIVE = "archive";

    private final Surroundings surroundings;

    @Parameters(paramLabel = "FILE", description = "The file to write; nothing is overwritten.")
    Path file = Path.of("");

    @Option(
            names = "--as",
            paramLabel = "WHAT",
            description = "archive (default), or the name of a table for CSV; see nestyear tables.")
    String what = ARCHIVE;

    @Mixin
    RecordsOptions records = new RecordsOptions();

    @Mixin
    AnswerOptions options = new AnswerOptions();

    ExportCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() {
        RecordsDesk desk = records.deskThatIsThere(surroundings);
        if (what.equals(ARCHIVE)) {
            AccountArchive.Contents contents = desk.writeArchive(file, new Progress(surroundings)::reached);
            int rows = contents.all();
            options.printPage(
                    surroundings,
                    () -> ExchangePrint.exportJson(file, what, rows),
                    () -> ExchangePrint.archiveWritten(file, rows));
        } else {
            int rows = desk.writeCsv(what, file);
            options.printPage(
                    surroundings,
                    () -> ExchangePrint.exportJson(file, what, rows),
                    () -> ExchangePrint.tableWritten(file, what, rows));
        }
        return ExitCode.ANSWERED;
    }
}
