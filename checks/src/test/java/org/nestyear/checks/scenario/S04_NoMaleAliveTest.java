package org.nestyear.checks.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.nestyear.checks.scenario.UsualSpring.finding;
import static org.nestyear.checks.scenario.UsualSpring.findingIds;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.nestyear.core.advice.Level;
import org.nestyear.core.plan.Plan;

/** Not one male among the cocoons: the females will nest, and every egg is a son. */
@Tag("regression")
class S04_NoMaleAliveTest {
    static final String TABLE = """
            today   | 2015-03-10
            bees    | Osmia bicornis | 120 females | 0 males | fridge | 130 d | 3 °C
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

    @Test
    void expectsSonsOnlyAndAsksForMales() {
        Plan plan = SeasonTable.plan(TABLE);
        Plan usual = UsualSpring.plan();
        System.out.println(Printed.plan("S04 no male alive", plan));
        assertThat(Printed.phrase(plan.headline()))
                .startsWith("Put 120 female cocoons out between ")
                .doesNotContain("male cocoons and")
                .doesNotContain(" 0 ");
        assertThat(finding(plan, "no-males").level()).isEqualTo(Level.ACT);
        assertThat(Printed.phrase(finding(plan, "no-males").action())).doesNotContain("buy");
        assertThat(findingIds(usual)).doesNotContain("no-males", "few-males");
        assertThat(plan.outlook().unmated()).isEqualTo(1);
        assertThat(plan.outlook().daughters()).isZero();
        assertThat(plan.outlook().sons()).isGreaterThan(usual.outlook().sons());
        // They nest all the same, so mud and plugs are the same work.
        assertThat(plan.outlook().cells())
                .isBetween(0.8 * usual.outlook().cells(), 1.2 * usual.outlook().cells());
        assertThat(Printed.phrase(UsualSpring.job(plan, "watch").number())).startsWith("females from");
    }
}
