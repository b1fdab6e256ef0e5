package org.nestyear.checks.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.nestyear.checks.scenario.UsualSpring.finding;
import static org.nestyear.checks.scenario.UsualSpring.findingIds;
import static org.nestyear.checks.scenario.UsualSpring.job;
import static org.nestyear.checks.scenario.UsualSpring.jobIds;

import java.time.LocalDate;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.nestyear.core.advice.Level;
import org.nestyear.core.plan.Plan;

/** Asked a week after the last apple flower, with the bees still in the fridge. */
@Tag("regression")
class S03_BloomMissedTest {
    static final String TABLE = """
            today   | 2015-05-16
            bees    | Osmia bicornis | 120 females | 210 males | fridge | 197 d | 3 °C
            tunnels | 400 | 8 mm | 150 mm
            bloom   | apple | 2015-04-20 | 2015-05-08
            other   | 2015-03-25 | 2015-05-05 | 2015-06-25 | 0.6
            season  | min | max | rain
            2014-11-01 |  4 | 11 | 1
            2014-12-15 |  0 |  5 | 1
            2015-01-15 | -2 |  4 | 1
            2015-02-15 | -1 |  6 | 0
            2015-03-15 |  2 | 11 | 0
            2015-04-20 |  5 | 16 | 0
            2015-05-16 |  8 | 20 | 0
            """;

    @Test
    void saysSoAndStillSavesWhatCanBeSaved() {
        Plan plan = SeasonTable.plan(TABLE);
        System.out.println(Printed.plan("S03 bloom missed", plan));
        assertThat(Printed.phrase(plan.headline()))
                .isEqualTo("Put 120 female and 210 male cocoons out now, and not later than 20 May.");
        assertThat(finding(plan, "bloom-over").level()).isEqualTo(Level.ACT);
        assertThat(plan.findings().get(0).id()).as("most pressing").isEqualTo("bloom-over");
        assertThat(findingIds(plan)).contains("long-in-the-cold", "best-at-the-edge", "fewer-than-put-out", "one-lot");
        // Nothing is held back: every day in the cold now costs.
        assertThat(jobIds(plan)).contains("put-out", "mud").doesNotContain("second-release", "ask-again");
        assertThat(job(plan, "put-out").from()).isEqualTo(LocalDate.of(2015, 5, 16));
        // In the warmth of May all are out within ten days, and the brood is a third of a usual spring's.
        assertThat(plan.outlook().mostFemales().late()).isBefore(LocalDate.of(2015, 5, 27));
        assertThat(plan.outlook().daughters())
                .isLessThan(0.5 * UsualSpring.plan().outlook().daughters());
    }
}
