package org.nestyear.app.cli;

import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.concurrent.Callable;
import org.nestyear.app.service.RecordsCopy;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

@Command(
        name = "restore",
        description = "Read a copy of the records through and put it in their place; those there are kept beside it.")
final class RestoreCommand implements Callable<Integer> {
    private final Surroundings surroundings;

    @Parameters(paramLabel = "FILE", description = "The copy, which stays as it is.")
    Path file = Path.of("");

    @Mixin
    RecordsPlace place = new RecordsPlace();

    @Mixin
    AnswerOptions options = new AnswerOptions();

    RestoreCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() {
        RecordsCopy copy = RecordsCopy.putBack(place.home(), file, LocalDateTime.now(surroundings.clock()));
        options.printPage(surroundings, () -> CopyPrint.json(copy, true), () -> CopyPrint.putBack(copy));
        return ExitCode.ANSWERED;
    }
}
