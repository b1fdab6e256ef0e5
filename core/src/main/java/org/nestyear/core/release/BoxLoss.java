package org.nestyear.core.release;

import org.nestyear.core.source.ParameterReader;

/**
 * Cocoons lost while they wait outdoors in the release box, to birds, mice, ants and damp (assumed: no count is known).
 *
 * @param aDay share lost a day
 * @param graceDays first days without such a loss, which the measured share that never comes out already holds
 */
record BoxLoss(double aDay, double graceDays) {
    static BoxLoss of(ParameterReader parameters) {
        return new BoxLoss(parameters.value("box_loss"), parameters.value("box_grace_days"));
    }

    /** Share of cocoons still there after so many days in the box, 0 to 1. */
    double shareLeft(int days) {
        return Math.max(0, 1 - aDay * Math.max(0, days - graceDays));
    }
}
