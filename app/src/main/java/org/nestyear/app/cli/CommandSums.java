package org.nestyear.app.cli;

import java.io.OutputStream;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.atomic.AtomicReference;
import org.nestyear.app.service.Refusal;
import org.nestyear.app.service.SmallSums;
import picocli.CommandLine;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.OptionSpec;

/** Answers small questions for another face, by the commands themselves. Safe for many threads. */
public final class CommandSums implements SmallSums {
    private final Clock clock;

    public CommandSums(Clock clock) {
        this.clock = clock;
    }

    @Override
    public Told ask(List<String> words) {
        AtomicReference<Told> told = new AtomicReference<>();
        AtomicReference<Refusal> refused = new AtomicReference<>();
        AtomicReference<Exception> failed = new AtomicReference<>();
        CommandLine line = commands((lines, json) -> told.set(new Told(lines, json, true)));
        line.setOut(new PrintWriter(Writer.nullWriter()));
        line.setErr(new PrintWriter(Writer.nullWriter()));
        line.setParameterExceptionHandler((problem, given) -> {
            refused.set(UsageMessages.of(problem));
            return ExitCode.BAD_INPUT;
        });
        line.setExecutionExceptionHandler((problem, command, parsed) -> {
            if (problem instanceof Refusal refusal) {
                refused.set(refusal);
            } else {
                failed.set(problem);
            }
            return ExitCode.DEFECT;
        });
        int exit = line.execute(words.toArray(String[]::new));
        if (refused.get() != null) {
            throw refused.get();
        }
        Told answer = told.get();
        if (answer == null) {
            throw new IllegalStateException("no answer to " + String.join(" ", words), failed.get());
        }
        return new Told(answer.lines(), answer.json(), exit == ExitCode.ANSWERED);
    }

    @Override
    public List<Word> wordsOf(String command) {
        CommandLine asked = Objects.requireNonNull(
                commands((lines, json) -> {}).getSubcommands().get(command), command);
        List<Word> words = new ArrayList<>();
        for (ArgSpec argument : asked.getCommandSpec().args()) {
            String name = argument instanceof OptionSpec option ? option.longestName() : argument.paramLabel();
            // In picocli a per cent sign of a description is written twice.
            String description = String.join(" ", argument.description()).replace("%%", "%");
            words.add(new Word(name, description, argument.required()));
        }
        return words;
    }

    private CommandLine commands(Surroundings.Ear ear) {
        PrintStream nowhere = new PrintStream(OutputStream.nullOutputStream(), false, StandardCharsets.UTF_8);
        return CommandFace.commands(new Surroundings(nowhere, nowhere, clock, ear), (words, out, err) -> {
            throw new IllegalStateException("the pages do not start the pages");
        });
    }
}
