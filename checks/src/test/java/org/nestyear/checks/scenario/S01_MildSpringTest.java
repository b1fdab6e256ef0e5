package org.nestyear.checks.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.nestyear.checks.scenario.UsualSpring.findingIds;
import static org.nestyear.checks.scenario.UsualSpring.job;
import static org.nestyear.checks.scenario.UsualSpring.jobIds;

import java.time.LocalDate;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.nestyear.core.plan.Plan;

/** Warm since New Year: bloom comes early, and so must the bees. */
@Tag("regression")
class S01_MildSpringTest {
    static final String TABLE = """
            today   | 2015-03-10
            bees    | Osmia bicornis | 120 females | 210 males | fridge | 130 d | 3 °C
            tunnels | 400 | 8 mm | 150 mm
            bloom   | apple | 700 °C·d from 02-01 | 18 d
            other   | 2015-03-25 | 2015-05-05 | 2015-06-25 | 0.6
            season  | min | max | rain
            2014-11-01 |  4 | 11 | 1
            2014-12-15 |  0 |  5 | 1
            2015-01-01 |  4 | 10 | 1
            2015-02-15 |  5 | 13 | 0
            2015-03-10 |  7 | 17 | 0
            """;

    @Test
    void everythingComesEarlier() {
        Plan plan = SeasonTable.plan(TABLE);
        Plan usual = UsualSpring.plan();
        System.out.println(Printed.plan("S01 mild spring", plan));
        assertThat(Printed.phrase(plan.headline()))
                .startsWith("Put 84 female and 147 male cocoons out between now and 2 Apr, best about ");
        assertThat(Printed.phrase(usual.headline()))
                .startsWith("Put 84 female and 147 male cocoons out between 18 Apr");
        // Bloom at least a fortnight earlier, the last good day three weeks, and the mud ready before mid April.
        assertThat(plan.outlook().targetBloom().middle())
                .isBefore(usual.outlook().targetBloom().middle().minusDays(14));
        assertThat(job(plan, "put-out").to())
                .isBefore(job(usual, "put-out").to().minusDays(21));
        assertThat(job(plan, "mud").from()).isBefore(LocalDate.of(2015, 4, 10));
        // Nearly time, so the question is asked again soon; at once would leave cocoons in the box for nothing.
        assertThat(jobIds(usual)).contains("ask-again");
        assertThat(job(plan, "ask-again").from()).isEqualTo(LocalDate.of(2015, 3, 12));
        // The part held back waits until the first are seen nesting, however early the first lot goes out.
        assertThat(job(plan, "second-release").from())
                .isAfter(plan.outlook().firstFemales().middle());
        // The trees run ahead of the bees: by the clock of decision 7 half the females are out after the middle of
        // bloom.
        assertThat(findingIds(plan)).contains("bloom-missed");
        assertThat(findingIds(plan)).doesNotContain("bloom-over", "no-males", "no-tunnels");
    }
}
