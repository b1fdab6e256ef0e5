package org.nestyear.checks.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.nestyear.checks.scenario.UsualSpring.job;
import static org.nestyear.checks.scenario.UsualSpring.jobIds;

import java.time.LocalDate;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.nestyear.core.plan.Plan;
import org.nestyear.core.season.SeasonInputs;

/** Four warm days that tempt, and more than a week of frost behind them in the forecast. */
@Tag("regression")
class S02_LateFrostTest {
    static final String TABLE = """
            today   | 2015-04-12
            bees    | Osmia bicornis | 120 females | 210 males | fridge | 163 d | 3 °C
            tunnels | 400 | 8 mm | 150 mm
            bloom   | apple | 2015-04-26 | 2015-05-14
            other   | 2015-03-25 | 2015-05-05 | 2015-06-25 | 0.6
            season  | min | max | rain
            2014-11-01 |  4 | 11 | 1
            2014-12-15 |  0 |  5 | 1
            2015-01-15 | -2 |  4 | 1
            2015-02-15 | -1 |  6 | 0
            2015-03-15 |  2 | 11 | 0
            2015-04-08 |  5 | 16 | 0
            2015-04-12 |  8 | 24 | 0
            forecast | min | max | rain
            2015-04-13 |  8 | 24 | 0
            2015-04-15 |  8 | 24 | 0
            2015-04-17 | -4 |  4 | 2
            2015-04-25 | -3 |  6 | 0
            2015-04-27 |  6 | 18 | 0
            """;

    @Test
    void waitsForTheEndOfTheWarmDays() {
        Plan plan = SeasonTable.plan(TABLE);
        System.out.println(Printed.plan("S02 late frost", plan));
        // Not in the warm days, whose bees would sit through the frost; any day after them until the frost ends will
        // do.
        assertThat(Printed.phrase(plan.headline()))
                .startsWith("Put 120 female and 210 male cocoons out between 16 Apr and 27 Apr");
        assertThat(plan.release().window().from()).isAfter(LocalDate.of(2015, 4, 15));
        assertThat(plan.release().window().to()).isAfterOrEqualTo(LocalDate.of(2015, 4, 25));
        // The rule of thumb looks at the warm days alone, and would lose half the season.
        assertThat(plan.release().ruleOfThumb().date()).isEqualTo(LocalDate.of(2015, 4, 12));
        assertThat(plan.release().ruleOfThumb().cost()).isBetween(0.3, 0.7);
        // The bees come out after the cold, so there is no spell to sit tight through.
        assertThat(jobIds(plan)).contains("ask-again").doesNotContain("cold-spell");
        assertThat(plan.outlook().coldSpell()).isLessThan(0.3);
        assertThat(job(plan, "watch").from()).isAfterOrEqualTo(LocalDate.of(2015, 4, 25));
    }

    /** Told nothing of the frost, the same day's plan ends its window sooner and thinks better of the warm days. */
    @Test
    void heedsTheForecast() {
        SeasonInputs told = SeasonTable.read(TABLE);
        Plan blind = SeasonTable.plan(new SeasonInputs(
                told.site(),
                told.weather(),
                null,
                told.batches(),
                told.nests(),
                told.plants(),
                told.community(),
                told.goal(),
                told.today()));
        Plan plan = SeasonTable.plan(TABLE);
        System.out.println("Without the forecast: " + Printed.phrase(blind.headline()) + " Rule of thumb loses "
                + blind.release().ruleOfThumb().cost());
        assertThat(blind.release().window().to())
                .isBefore(plan.release().window().to());
        assertThat(blind.release().ruleOfThumb().cost())
                .isLessThan(plan.release().ruleOfThumb().cost());
        assertThat(blind.outlook().coldSpell()).isLessThan(1);
    }
}
