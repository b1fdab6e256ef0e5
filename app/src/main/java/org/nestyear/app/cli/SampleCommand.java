package org.nestyear.app.cli;

import java.util.Objects;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.nestyear.app.service.Refusal;
import org.nestyear.app.service.SampleAnswer;
import org.nestyear.app.service.SampleQuestion;
import org.nestyear.app.service.SampleQuestion.Things;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

@Command(
        name = "sample",
        description =
                "Say how many to look at: to see a disease if it is there, or to know a share to within a margin.")
final class SampleCommand implements Callable<Integer> {
    private static final int MOST = 10_000_000;

    private final Surroundings surroundings;

    @Option(names = "--population", paramLabel = "N", description = "How many there are in all (default: very many).")
    @Nullable
    String population;

    @Option(
            names = "--of",
            paramLabel = "THINGS",
            description = "cocoons (default), nests, or containers of a traded lot.")
    @Nullable
    String things;

    @Option(
            names = "--prevalence",
            paramLabel = "P",
            description = "Smallest share of ill ones that must not be missed, such as 5%%; with --margin, the share"
                    + " expected (default 50%%).")
    @Nullable
    String prevalence;

    @Option(names = "--confidence", paramLabel = "C", description = "Confidence, such as 95 (default), 90%% or 0.99.")
    String confidence = "95";

    @Option(names = "--margin", paramLabel = "E", description = "Know the share to within so much, such as 5%%.")
    @Nullable
    String margin;

    @Option(
            names = "--sensitivity",
            paramLabel = "P",
            description = "Chance that an ill one you look at is told to be ill, such as 80%% (default: always).")
    @Nullable
    String sensitivity;

    @Mixin
    AnswerOptions options = new AnswerOptions();

    SampleCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() {
        Things what = Objects.requireNonNullElse(
                Arguments.word("--of", things, Things.values(), Things::word), Things.COCOONS);
        OptionalInt all = population == null
                ? OptionalInt.empty()
                : OptionalInt.of(Amounts.whole("--population", population, 1, MOST));
        SampleAnswer answer = SampleAnswer.of(new SampleQuestion(what, all, aim(what)));
        options.unitSystem();
        options.print(surroundings, () -> SampleJson.of(answer), () -> SampleText.of(answer));
        return answer.isReached() ? ExitCode.ANSWERED : ExitCode.PARTLY;
    }

    private SampleQuestion.Aim aim(Things what) {
        if (sensitivity != null && (what == Things.CONTAINERS || margin != null)) {
            throw Refusal.usage(
                    "--sensitivity is given; expected it with --prevalence only, without --margin and not of containers.",
                    "");
        }
        if (what == Things.CONTAINERS) {
            if (population == null || prevalence != null || margin != null) {
                throw Refusal.usage(
                        "samples by container follow a fixed plan; expected --population (how many containers), without"
                                + " --prevalence and --margin.",
                        "");
            }
            return new SampleQuestion.Lot();
        }
        double sure = Amounts.share("--confidence", confidence);
        if (margin != null) {
            return new SampleQuestion.Know(
                    prevalence == null ? 0.5 : Amounts.share("--prevalence", prevalence),
                    Amounts.share("--margin", margin),
                    sure);
        }
        if (prevalence == null) {
            throw Refusal.usage(
                    "it is not clear what the sample is for; expected --prevalence P (to see a disease at least once) or"
                            + " --margin E (to know a share).",
                    "");
        }
        return new SampleQuestion.See(
                Amounts.share("--prevalence", prevalence),
                sure,
                sensitivity == null ? 1 : Amounts.share("--sensitivity", sensitivity));
    }
}
