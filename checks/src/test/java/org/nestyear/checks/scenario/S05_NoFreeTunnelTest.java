package org.nestyear.checks.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.nestyear.checks.scenario.UsualSpring.finding;
import static org.nestyear.checks.scenario.UsualSpring.job;
import static org.nestyear.checks.scenario.UsualSpring.jobIds;

import java.time.LocalDate;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.nestyear.core.advice.Level;
import org.nestyear.core.advice.Quantity;
import org.nestyear.core.plan.Plan;

/** All tunnels are full of last year's bees. */
@Tag("regression")
class S05_NoFreeTunnelTest {
    static final String TABLE = """
            today   | 2015-03-10
            bees    | Osmia bicornis | 120 females | 210 males | fridge | 130 d | 3 °C
            tunnels | 0 | 8 mm | 150 mm
            bloom   | apple | 700 °C·d from 02-01 | 18 d
            other   | 2015-03-25 | 2015-05-05 | 2015-06-25 | 0.6
            season  | min | max | rain
            2014-11-01 |  4 | 11 | 1
            2014-12-15 |  0 |  5 | 1
            2015-01-15 | -2 |  4 | 1
            2015-02-15 | -1 |  6 | 0
            2015-03-10 |  2 | 10 | 0
            """;

    @Test
    void asksForTunnelsBeforeTheFirstFemale() {
        Plan plan = SeasonTable.plan(TABLE);
        System.out.println(Printed.plan("S05 no free tunnel", plan));
        assertThat(Printed.phrase(plan.headline())).startsWith("Put 120 female and 210 male cocoons out between ");
        assertThat(finding(plan, "no-tunnels").level()).isEqualTo(Level.ACT);
        assertThat(jobIds(plan)).contains("add-tunnels").doesNotContain("mud", "count-plugs");
        assertThat(jobIds(UsualSpring.plan())).contains("mud", "count-plugs").doesNotContain("add-tunnels");
        // 120 females, 7 % never out, 65 % at most settle, two tunnels each.
        assertThat(job(plan, "add-tunnels").number().arguments()).contains(Quantity.count(146));
        assertThat(job(plan, "add-tunnels").from()).isEqualTo(LocalDate.of(2015, 3, 10));
        assertThat(job(plan, "add-tunnels").to())
                .isEqualTo(plan.outlook().firstFemales().early());
        assertThat(plan.outlook().cells()).isZero();
        assertThat(plan.outlook().daughters()).isZero();
        assertThat(plan.outlook().tunnelsUsed()).isZero();
        assertThat(plan.release().shareCapped()).isEqualTo(1);
        assertThat(plan.outlook().noFemaleSettles()).isEqualTo(1);
    }
}
