package org.nestyear.app.cli;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.nestyear.app.book.AccountArchive;
import org.nestyear.app.book.DoneAct;
import org.nestyear.app.book.ImportPlan;
import org.nestyear.app.book.RecordsDesk;
import org.nestyear.app.book.TableWords;
import org.nestyear.app.service.Refusal;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
        name = "import",
        description = "Read a CSV table, or the archive of a whole account, into the records: all of it or nothing.")
final class ImportCommand implements Callable<Integer> {
    private final Surroundings surroundings;

    @Parameters(paramLabel = "FILE", description = "A CSV file of one table, or an archive (.zip) as export writes it.")
    Path file = Path.of("");

    @Option(
            names = "--into",
            paramLabel = "TABLE",
            description = "The table of a CSV file (default: the one the file is named after).")
    @Nullable
    String table;

    @Option(names = "--dry-run", description = "Only say line by line what would change.")
    boolean dryRun;

    @Mixin
    RecordsOptions records = new RecordsOptions();

    @Mixin
    AnswerOptions options = new AnswerOptions();

    ImportCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() {
        RecordsDesk desk = records.desk(surroundings);
        Progress progress = new Progress(surroundings);
        String name = file.getFileName() == null ? "" : file.getFileName().toString();
        if (name.toLowerCase(Locale.ROOT).endsWith(".zip") && table == null) {
            AccountArchive.Contents contents = desk.readArchive(file, !dryRun, progress::reached);
            options.printPage(
                    surroundings,
                    () -> ExchangePrint.archiveJson(file, contents, !dryRun),
                    () -> ExchangePrint.archiveRead(file, contents, !dryRun));
            return ExitCode.ANSWERED;
        }
        progress.reached("reading " + name);
        ImportPlan plan = desk.planImport(table == null ? tableOf(name) : table, file);
        progress.reached("writing");
        Optional<DoneAct> act = dryRun ? Optional.empty() : desk.apply(records.who(), plan);
        options.printPage(
                surroundings,
                () -> ExchangePrint.importJson(plan, act, dryRun),
                () -> ExchangePrint.imported(plan, act, dryRun));
        return ExitCode.ANSWERED;
    }

    private static String tableOf(String name) {
        String bare = name.toLowerCase(Locale.ROOT).replaceFirst("\\.[a-z]+$", "");
        return TableWords.all().stream()
                .map(TableWords::name)
                .filter(bare::equals)
                .findFirst()
                .orElseThrow(() -> Refusal.usage(
                        "\"" + name + "\" is not named after a table; expected --into TABLE, or an archive (.zip).",
                        "Maybe see nestyear tables."));
    }
}
