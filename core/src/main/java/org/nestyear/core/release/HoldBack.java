package org.nestyear.core.release;

import java.time.LocalDate;

/**
 * What comes of holding a share of the cocoons back for a second lot.
 *
 * @param share share held back, 0 to 1; 0 for all in one lot
 * @param second day on which the part held back goes out; that of the first lot when none is
 * @param cost share of the score of one lot lost on average, negative for a gain
 * @param gainInBadYears what it wins in the worst spring in ten, as a share of the best mean score; negative for a loss
 * @param allLost chance that nothing is left: that what no weather record shows strikes each lot, or that no female settles
 * @param left share of the score of one lot that is left when the first lot is lost
 */
public record HoldBack(
        double share, LocalDate second, double cost, double gainInBadYears, double allLost, double left) {}
