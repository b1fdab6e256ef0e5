package org.nestyear.core.release;

import java.time.LocalDate;

/**
 * One past spring decided again with only what was then known.
 *
 * @param year the spring
 * @param best the date that would have been best in hindsight
 * @param plan the plan's date as made on the day of decision, and what it lost
 * @param rolling the date on which the plan, asked every two days, said "now", and what it lost
 * @param rule the rule of thumb's date and loss
 * @param fixed the best fixed calendar date of the other years and its loss
 * @param bloom middle of bloom as observed
 * @param bloomEarly lower end of the 10 to 90 % band forecast for it on the day of decision
 * @param bloomLate upper end
 * @param bloomScore continuous ranked probability score of that forecast, d
 * @param climateScore the same for the other years' observed dates, d
 * @param females day on which half the females come out in that spring's weather after the plan's date
 * @param femalesEarly lower end of the band forecast for it
 * @param femalesLate upper end
 * @param fortnightCost mean loss of dates two weeks off the best: how steep this spring's curve was
 */
public record HindcastYear(
        int year,
        LocalDate best,
        Chosen plan,
        Chosen rolling,
        Chosen rule,
        Chosen fixed,
        LocalDate bloom,
        double bloomEarly,
        double bloomLate,
        double bloomScore,
        double climateScore,
        double females,
        double femalesEarly,
        double femalesLate,
        double fortnightCost) {

    /** A date and the share of the best score it lost in that spring, 0 to 1. */
    public record Chosen(LocalDate date, double regret) {}

    /** True when the observed bloom lay inside its forecast band. */
    public boolean bloomCovered() {
        double day = bloom.getDayOfYear();
        return day >= bloomEarly && day <= bloomLate;
    }

    /** True when half the females were out inside their forecast band. */
    public boolean femalesCovered() {
        return females >= femalesEarly && females <= femalesLate;
    }
}
