package org.nestyear.app.cli;

import java.io.PrintStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.util.Arrays;
import org.nestyear.app.service.Refusal;
import org.nestyear.app.service.Version;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.IVersionProvider;

/** The command line as a whole: finds the command, prints its answer, and turns refusals into exit codes. */
public final class CommandFace {
    private CommandFace() {}

    /**
     * Runs one command.
     *
     * @param out receives answers only, as UTF-8
     * @param err receives messages
     * @param server shows the pages when asked to
     * @return the exit code: 0 answered, 1 a defect, 2 bad usage or input, 3 no honest answer, 4 partly answered
     */
    public static int run(String[] arguments, PrintStream out, PrintStream err, Clock clock, Server server) {
        Surroundings surroundings = new Surroundings(out, err, clock, null);
        if (arguments.length > 0 && arguments[0].equals("serve")) {
            return server.serve(Arrays.copyOfRange(arguments, 1, arguments.length), out, err);
        }
        CommandLine line = commands(surroundings, server);
        line.setOut(new PrintWriter(out, true, StandardCharsets.UTF_8));
        line.setErr(new PrintWriter(err, true, StandardCharsets.UTF_8));
        line.setParameterExceptionHandler((problem, given) -> refuse(UsageMessages.of(problem), err));
        line.setExecutionExceptionHandler((problem, command, parsed) -> {
            if (problem instanceof Refusal refusal) {
                return refuse(refusal, err);
            }
            return defect(problem, err);
        });
        return line.execute(arguments);
    }

    /** All commands, about these surroundings. */
    static CommandLine commands(Surroundings surroundings, Server server) {
        CommandLine line = new CommandLine(new Root())
                .addSubcommand(new PlanCommand(surroundings))
                .addSubcommand(new DemoCommand(surroundings))
                .addSubcommand(new NormalCommand(surroundings))
                .addSubcommand(new TorchCommand(surroundings))
                .addSubcommand(new FlowersCommand(surroundings))
                .addSubcommand(new NestsCommand(surroundings))
                .addSubcommand(new CheckFileCommand(surroundings))
                .addSubcommand(new BloomCommand(surroundings))
                .addSubcommand(new EmergeCommand(surroundings))
                .addSubcommand(new SunCommand(surroundings))
                .addSubcommand(new FacingCommand(surroundings))
                .addSubcommand(new DegreeDaysCommand(surroundings))
                .addSubcommand(new ChillCommand(surroundings))
                .addSubcommand(new WarmCommand(surroundings))
                .addSubcommand(new WinterCommand(surroundings))
                .addSubcommand(new IntervalCommand(surroundings))
                .addSubcommand(new SampleCommand(surroundings))
                .addSubcommand(new RinseCommand(surroundings))
                .addSubcommand(new MudCommand(surroundings))
                .addSubcommand(new RangeCommand(surroundings))
                .addSubcommand(new TrendCommand(surroundings))
                .addSubcommand(new TunnelsCommand(surroundings))
                .addSubcommand(new OrchardCommand(surroundings))
                .addSubcommand(new SexCountCommand(surroundings))
                .addSubcommand(new YearsCommand(surroundings))
                .addSubcommand(new LossesCommand(surroundings))
                .addSubcommand(new PlugCommand(surroundings))
                .addSubcommand(new EnemiesCommand(surroundings))
                .addSubcommand(new TablesCommand(surroundings))
                .addSubcommand(new EnterCommand(surroundings))
                .addSubcommand(new EntriesCommand(surroundings))
                .addSubcommand(new CorrectCommand(surroundings))
                .addSubcommand(new TakeOutCommand(surroundings))
                .addSubcommand(new UndoCommand(surroundings))
                .addSubcommand(new DoneCommand(surroundings))
                .addSubcommand(new PhotoCommand(surroundings))
                .addSubcommand(new NextYearCommand(surroundings))
                .addSubcommand(new SpringCommand(surroundings))
                .addSubcommand(new ImportCommand(surroundings))
                .addSubcommand(new ExportCommand(surroundings))
                .addSubcommand(new BackupCommand(surroundings))
                .addSubcommand(new RestoreCommand(surroundings))
                .addSubcommand(new ServeCommand(surroundings, server));
        line.setColorScheme(CommandLine.Help.defaultColorScheme(Ansi.OFF));
        line.setAbbreviatedOptionsAllowed(false);
        line.setUsageHelpAutoWidth(false);
        return line;
    }

    private static int refuse(Refusal refusal, PrintStream err) {
        String place = refusal.place().isEmpty() ? "nestyear" : refusal.place();
        err.println(place + ": " + refusal.sentence() + " [" + refusal.code() + "]");
        if (!refusal.advice().isEmpty()) {
            err.println(refusal.advice());
        }
        return ExitCode.of(refusal);
    }

    private static int defect(Exception problem, PrintStream err) {
        StringWriter trace = new StringWriter();
        problem.printStackTrace(new PrintWriter(trace));
        err.println("nestyear: the program failed, which is a defect of its own and not of your input; please report"
                + " the lines below. [NY-DEFECT]");
        err.print(trace);
        return ExitCode.DEFECT;
    }

    @Command(
            name = "nestyear",
            description = "Dates, quantities, risks and reasons for keepers of solitary cavity-nesting bees.",
            synopsisSubcommandLabel = "COMMAND",
            mixinStandardHelpOptions = true,
            versionProvider = VersionWords.class,
            scope = CommandLine.ScopeType.INHERIT,
            exitCodeListHeading = "%nExit codes:%n",
            exitCodeList = {
                "0:answered",
                "1:a defect of the program",
                "2:bad usage or input; one sentence says what, where and what was expected",
                "3:no honest answer is possible",
                "4:partly answered"
            })
    static final class Root implements Runnable {

        @Override
        public void run() {
            throw Refusal.usage(
                    "no command is given; expected one such as plan FILE or demo.", "Maybe see nestyear --help.");
        }
    }

    static final class VersionWords implements IVersionProvider {
        @Override
        public String[] getVersion() {
            return new String[] {"nestyear " + Version.NUMBER};
        }
    }
}
