package org.nestyear.checks.release;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.nestyear.core.advice.Job;
import org.nestyear.core.plan.Plan;
import org.nestyear.core.season.Spray;

/** A spray announced nearby (extension advice: the label decides, never on open bloom; days to wait assumed). */
class SprayTest {
    private static final int YEARS = 5;
    private static final int WAIT_DAYS = 3;

    private static Optional<Job> job(Plan plan) {
        return plan.jobs().stream().filter(job -> job.id().equals("spray")).findFirst();
    }

    private static Plan planned(LocalDate... dates) {
        Draft draft = Draft.washington(YEARS);
        draft.sprays = Arrays.stream(dates)
                .map(date -> new Spray(date, "orchard next door"))
                .toList();
        return draft.plan();
    }

    @Test
    void insideTheWindowItSaysWhenToPutNothingOut() {
        Plan calm = planned();
        assertThat(job(calm)).isEmpty();
        LocalDate date = calm.release().window().from().plusDays(1);
        Plan plan = planned(date.plusDays(30), date);
        Job job = job(plan).orElseThrow();
        assertThat(plan.release().window()).isEqualTo(calm.release().window());
        assertThat(job.to()).isEqualTo(date.plusDays(WAIT_DAYS));
        assertThat(job.caution()).isNotNull();
        assertThat(job.why().toString()).contains(date.toString(), "orchard next door");
        assertThat(job.number().toString()).contains("put nothing out");
    }

    @Test
    void afterTheLastNestItIsNobodysBusiness() {
        assertThat(job(planned(LocalDate.of(2013, 10, 1)))).isEmpty();
        assertThat(job(planned(LocalDate.of(2013, 1, 10)))).isEmpty();
    }

    @Test
    void whileBeesFlyNothingIsMoved() {
        Plan calm = planned();
        Job job = job(planned(calm.outlook().lastNesting().middle())).orElseThrow();
        assertThat(job.number().toString()).contains("nothing is put out or carried off");
        assertThat(List.of(job.caution())).asString().contains("Never plug");
    }
}
