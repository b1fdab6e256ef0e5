package org.nestyear.app.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.nestyear.app.service.FlowersAnswer;
import org.nestyear.app.service.FlowersQuestion;
import org.nestyear.app.service.PlanRequest;
import org.nestyear.app.service.Refusal;
import org.nestyear.app.service.Wording;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
        name = "flowers",
        description = "Hold the flowers in reach against the cells of a season, and name plants for the gaps.")
final class FlowersCommand implements Callable<Integer> {
    private static final double MOST_CELLS = 1e6;
    private static final int LONGEST_DAYS = 200;

    private final Surroundings surroundings;

    @Parameters(paramLabel = "FILE", description = "The season file (TOML); its plants with cover_m2.")
    Path file = Path.of("");

    @Option(names = "--today", paramLabel = "DATE", description = "The day it is, whatever the file says.")
    @Nullable
    String today;

    @Option(
            names = "--cells",
            paramLabel = "N",
            description = "Cells all bees together build a day, in place of the plan's; with --from and --to.")
    @Nullable
    String cells;

    @Option(names = "--from", paramLabel = "DATE", description = "First day of nesting, with --cells.")
    @Nullable
    String from;

    @Option(names = "--to", paramLabel = "DATE", description = "Last day of nesting, with --cells.")
    @Nullable
    String to;

    @Mixin
    AnswerOptions options = new AnswerOptions();

    FlowersCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() {
        options.unitSystem();
        PlanRequest request =
                new PlanRequest(surroundings.today(), today == null ? null : Arguments.date("--today", today), null);
        FlowersAnswer answer = FlowersAnswer.of(new FlowersQuestion(file, request, told()));
        Wording words =
                new Wording(options.unitSystem(), answer.inputs().today().getYear());
        options.printPage(surroundings, () -> FlowersJson.of(answer), () -> FlowersText.of(answer, words));
        return ExitCode.ANSWERED;
    }

    private FlowersQuestion.@Nullable ToldCells told() {
        if (cells == null && from == null && to == null) {
            return null;
        }
        if (cells == null || from == null || to == null) {
            throw Refusal.usage(
                    "of --cells, --from and --to some are given and some are not; expected all three or none.", "");
        }
        double number = Arguments.number("--cells", cells, 0, MOST_CELLS, "cells a day");
        LocalDate first = Arguments.date("--from", from);
        LocalDate last = Arguments.date("--to", to);
        long days = ChronoUnit.DAYS.between(first, last);
        if (days < 0 || days > LONGEST_DAYS) {
            throw Refusal.usage(
                    "--to is " + last + "; expected a day from " + first + ", which is --from, to "
                            + first.plusDays(LONGEST_DAYS) + ".",
                    days < 0 ? "Maybe the two are swapped." : "");
        }
        return new FlowersQuestion.ToldCells(number, first, last);
    }
}
