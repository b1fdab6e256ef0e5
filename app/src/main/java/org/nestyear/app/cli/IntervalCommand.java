package org.nestyear.app.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.nestyear.app.service.IntervalAnswer;
import org.nestyear.app.service.IntervalQuestion;
import org.nestyear.app.service.Refusal;
import org.nestyear.core.count.Tally;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

@Command(
        name = "interval",
        description = "Say what a few counted ones tell of all: the limits of a share, and of a difference.")
final class IntervalCommand implements Callable<Integer> {
    private static final int MOST = 100_000_000;

    private final Surroundings surroundings;

    @Option(names = "--found", paramLabel = "K", description = "How many were found.")
    @Nullable
    String found;

    @Option(names = "--of", paramLabel = "N", description = "Among how many looked at.")
    @Nullable
    String of;

    @Option(
            names = "--nest",
            paramLabel = "K/N",
            description =
                    "Found and looked at in one nest, such as 2/7; once for each nest, instead of --found and --of.")
    List<String> nests = List.of();

    @Option(names = "--level", paramLabel = "L", description = "Confidence, such as 95 (default), 90%% or 0.99.")
    String level = "95";

    @Option(names = "--against", paramLabel = "K/N", description = "Another tally to compare with, such as 3/40.")
    @Nullable
    String against;

    @Mixin
    AnswerOptions options = new AnswerOptions();

    IntervalCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() {
        IntervalAnswer answer = IntervalAnswer.of(new IntervalQuestion(
                counted(),
                Amounts.share("--level", level),
                against == null ? null : Amounts.tally("--against", against)));
        options.unitSystem();
        options.print(surroundings, () -> IntervalJson.of(answer), () -> IntervalText.of(answer));
        return ExitCode.ANSWERED;
    }

    private List<Tally> counted() {
        if (nests.isEmpty() && found != null && of != null) {
            int all = Amounts.whole("--of", of, 1, MOST);
            return List.of(Amounts.tally("--found", found, Amounts.whole("--found", found, 0, MOST), all));
        }
        if (!nests.isEmpty() && found == null && of == null) {
            List<Tally> tallies = new ArrayList<>();
            nests.forEach(nest -> tallies.add(Amounts.tally("--nest", nest)));
            if (tallies.size() == 1) {
                throw Refusal.usage(
                        "--nest is given once; expected two nests or more, because one tells nothing of the spread between"
                                + " nests.",
                        "Maybe use --found and --of for a single tally.");
            }
            return tallies;
        }
        throw Refusal.usage(
                "it is not clear what was counted; expected either --found K and --of N, or --nest K/N for each nest.",
                "");
    }
}
