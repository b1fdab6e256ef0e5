package org.nestyear.checks.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.nestyear.core.advice.Job;
import org.nestyear.core.plan.Plan;

/** Advice that were the same in every spring would be a leaflet: no two of the springs get the same list of jobs. */
@Tag("regression")
class SpringsDifferTest {
    private static List<String> dated(Plan plan) {
        List<String> jobs = new ArrayList<>();
        for (Job job : plan.jobs()) {
            jobs.add(job.id() + " " + job.from() + " " + job.to());
        }
        return jobs;
    }

    @Test
    void noTwoSpringsGetTheSameJobs() {
        List<List<String>> lists = List.of(
                dated(UsualSpring.plan()),
                dated(SeasonTable.plan(S01_MildSpringTest.TABLE)),
                dated(SeasonTable.plan(S02_LateFrostTest.TABLE)),
                dated(SeasonTable.plan(S03_BloomMissedTest.TABLE)),
                dated(SeasonTable.plan(S04_NoMaleAliveTest.TABLE)),
                dated(SeasonTable.plan(S05_NoFreeTunnelTest.TABLE)));
        assertThat(lists).allSatisfy(list -> assertThat(list).hasSizeGreaterThan(5));
        assertThat(lists).doesNotHaveDuplicates();
    }
}
