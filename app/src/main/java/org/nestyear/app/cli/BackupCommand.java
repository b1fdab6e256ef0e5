package org.nestyear.app.cli;

import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.nestyear.app.service.RecordsCopy;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(name = "backup", description = "Copy the records into one file, also while the pages are open.")
final class BackupCommand implements Callable<Integer> {
    private final Surroundings surroundings;

    @Parameters(
            arity = "0..1",
            paramLabel = "FILE",
            description = "The file to write, or a folder (default: one named by the moment, in backups).")
    @Nullable
    Path file;

    @Option(names = "--overwrite", description = "Replace a file of that name.")
    boolean overwrite;

    @Mixin
    RecordsPlace place = new RecordsPlace();

    @Mixin
    AnswerOptions options = new AnswerOptions();

    BackupCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() {
        RecordsCopy copy = RecordsCopy.make(place.home(), file, overwrite, LocalDateTime.now(surroundings.clock()));
        options.printPage(surroundings, () -> CopyPrint.json(copy, false), () -> CopyPrint.made(copy));
        return ExitCode.ANSWERED;
    }
}
