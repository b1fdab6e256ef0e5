package org.nestyear.app.cli;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.nestyear.app.book.DoneAct;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

@Command(
        name = "undo",
        description = "Take back what was done last, or one thing that was done; undo of an undo does it again.")
final class UndoCommand implements Callable<Integer> {
    private final Surroundings surroundings;

    @Parameters(arity = "0..1", paramLabel = "ACT", description = "The first characters of its id; see nestyear done.")
    @Nullable
    String act;

    @Mixin
    RecordsOptions records = new RecordsOptions();

    @Mixin
    AnswerOptions options = new AnswerOptions();

    UndoCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() {
        DoneAct done = records.deskThatIsThere(surroundings).undo(records.who(), Optional.ofNullable(act));
        options.printPage(surroundings, () -> EntryJson.done(List.of(done)), () -> EntryPrint.done(List.of(done)));
        return ExitCode.ANSWERED;
    }
}
