package org.nestyear.core.release;

import java.time.LocalDate;

/**
 * One candidate date of the release curve.
 *
 * @param date day the cocoons go out
 * @param mean mean score over the weather years, 0 to 1 as a share of what the best date gives
 * @param p10 tenth percentile of the score over weather years and parameter draws
 * @param p90 ninetieth percentile
 * @param daughters mean surviving daughters
 * @param bloomDays mean female flight days inside the target bloom
 * @param cost share of the best date's score lost by this date, 0 to 1
 * @param inWindow whether the date cannot be told from the best at 90 %
 */
public record CurvePoint(
        LocalDate date,
        double mean,
        double p10,
        double p90,
        double daughters,
        double bloomDays,
        double cost,
        boolean inWindow) {}
