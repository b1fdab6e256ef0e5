package org.nestyear.checks.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.nestyear.core.advice.Finding;
import org.nestyear.core.advice.Job;
import org.nestyear.core.plan.Plan;

/** The spring that the five others are measured against, and what their tests ask of a plan. */
final class UsualSpring {
    static final String TABLE = """
            today   | 2015-03-10
            bees    | Osmia bicornis | 120 females | 210 males | fridge | 130 d | 3 °C
            tunnels | 400 | 8 mm | 150 mm
            bloom   | apple | 700 °C·d from 02-01 | 18 d
            other   | 2015-03-25 | 2015-05-05 | 2015-06-25 | 0.6
            season  | min | max | rain
            2014-11-01 |  4 | 11 | 1
            2014-12-15 |  0 |  5 | 1
            2015-01-15 | -2 |  4 | 1
            2015-02-15 | -1 |  6 | 0
            2015-03-10 |  2 | 10 | 0
            """;

    private UsualSpring() {}

    static Plan plan() {
        return SeasonTable.plan(TABLE);
    }

    static List<String> jobIds(Plan plan) {
        return plan.jobs().stream().map(Job::id).toList();
    }

    static List<String> findingIds(Plan plan) {
        return plan.findings().stream().map(Finding::id).toList();
    }

    static Job job(Plan plan, String id) {
        List<Job> jobs = plan.jobs().stream().filter(j -> j.id().equals(id)).toList();
        assertThat(jobs).as("jobs called " + id + " among " + jobIds(plan)).hasSize(1);
        return jobs.get(0);
    }

    static Finding finding(Plan plan, String id) {
        List<Finding> findings =
                plan.findings().stream().filter(f -> f.id().equals(id)).toList();
        assertThat(findings)
                .as("findings called " + id + " among " + findingIds(plan))
                .hasSize(1);
        return findings.get(0);
    }
}
