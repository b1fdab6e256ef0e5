package org.nestyear.app.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.nestyear.app.book.DemoAccount;
import org.nestyear.app.book.DoneAct;
import org.nestyear.app.service.Demo;
import org.nestyear.app.service.PlanService;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

@Command(name = "demo", description = "Plan the invented season that comes with the program, or write its files out.")
final class DemoCommand implements Callable<Integer> {
    private static final String INVENTED = "This season is invented; only its weather is real.";

    private final Surroundings surroundings;

    @Option(
            names = "--write",
            paramLabel = "DIR",
            description = "Write the season file and its weather into this folder, to start your own from.")
    @Nullable
    Path folder;

    @Option(
            names = "--records",
            description = "Write the invented account of three years into empty records, to look around in.")
    boolean account;

    @Mixin
    RecordsOptions records = new RecordsOptions();

    @Mixin
    PlanOptions options = new PlanOptions();

    DemoCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() {
        if (folder != null) {
            List<Path> written = Demo.write(folder);
            written.forEach(file -> surroundings.out().println(file));
            surroundings.err().println("Change the numbers to your own, then: nestyear plan " + written.get(0));
            return ExitCode.ANSWERED;
        }
        if (account) {
            DoneAct act = DemoAccount.open(records.desk(surroundings), records.who(), records.folder());
            surroundings
                    .out()
                    .println("Three invented years of three gardens are in the records now: " + act.entries()
                            + " entries. Only their weather is real. Take them out again with nestyear undo.");
            return ExitCode.ANSWERED;
        }
        options.check();
        String answer = options.render(PlanService.standard().planDemo(options.request(surroundings)));
        if (options.answer.json) {
            surroundings.err().println(INVENTED);
        } else {
            surroundings.out().println(INVENTED + "\n");
        }
        surroundings.out().print(answer);
        return ExitCode.ANSWERED;
    }
}
