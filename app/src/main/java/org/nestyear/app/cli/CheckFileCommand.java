package org.nestyear.app.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.nestyear.app.service.FileCheck;
import org.nestyear.app.service.FileReport;
import org.nestyear.app.service.PlanService;
import org.nestyear.app.service.Wording;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

@Command(
        name = "check-file",
        description = "Say what a weather table (CSV) or a season file (TOML) holds, its gaps, and its faults by line.")
final class CheckFileCommand implements Callable<Integer> {
    private final Surroundings surroundings;

    @Parameters(paramLabel = "FILE", description = "A weather table or a season file.")
    Path file = Path.of("");

    @Mixin
    AnswerOptions options = new AnswerOptions();

    CheckFileCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() {
        Wording words = new Wording(options.unitSystem(), surroundings.today().getYear());
        FileReport report = new FileCheck(PlanService.catalogue()).check(file, surroundings.today());
        surroundings.out().print(options.json ? FileReportJson.of(report) : FileReportText.of(report, words));
        return report.faults().isEmpty() ? ExitCode.ANSWERED : ExitCode.BAD_INPUT;
    }
}
