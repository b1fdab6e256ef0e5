package org.nestyear.app.cli;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.nestyear.app.service.PlanAnswer;
import org.nestyear.app.service.PlanRequest;
import org.nestyear.app.service.Refusal;
import org.nestyear.app.service.Spelling;
import org.nestyear.app.service.Wording;
import org.nestyear.core.advice.Job;
import org.nestyear.core.season.Goal;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Options of the commands that plan a season. */
final class PlanOptions {
    @Mixin
    AnswerOptions answer = new AnswerOptions();

    @Option(names = "--why", paramLabel = "JOB", description = "Show one job with the numbers behind it.")
    @Nullable
    String why;

    @Option(
            names = "--aim",
            paramLabel = "AIM",
            description =
                    "both, brood (most daughters) or bloom (most bees in the target bloom), whatever the file says.")
    @Nullable
    String aim;

    @Option(
            names = "--today",
            paramLabel = "DATE",
            description = "The day the plan is made for, whatever the file says; weather after it is not read.")
    @Nullable
    String today;

    PlanRequest request(Surroundings surroundings) {
        return new PlanRequest(
                surroundings.today(),
                today == null ? null : Arguments.date("--today", today),
                Arguments.word("--aim", aim, Goal.values(), Goal::word));
    }

    /** The answer in the form asked for. */
    String render(PlanAnswer plan) {
        Wording words = new Wording(answer.unitSystem(), plan.plan().today().getYear());
        if (why != null) {
            return PlanText.why(plan, job(plan.plan().jobs(), why), words);
        }
        return answer.json ? PlanJson.of(plan, words) : PlanText.of(plan, words);
    }

    /** Whether the whole plan is printed as text. */
    boolean isWholeText() {
        return why == null && !answer.json;
    }

    /** Refuses what cannot go together, before the model is run. */
    void check() {
        answer.unitSystem();
        if (why != null && answer.json) {
            throw Refusal.usage(
                    "--why and --json are both given; expected one of them.",
                    "Maybe leave --why out: the JSON object holds the reasons of every job.");
        }
    }

    private static Job job(List<Job> jobs, String id) {
        List<String> known = jobs.stream().map(Job::id).toList();
        return jobs.stream()
                .filter(job -> job.id().equals(id))
                .findFirst()
                .orElseThrow(() -> Refusal.usage(
                        "this plan has no job \"" + id + "\"; expected one of " + String.join(", ", known) + ".",
                        Spelling.advice(id, known)));
    }
}
