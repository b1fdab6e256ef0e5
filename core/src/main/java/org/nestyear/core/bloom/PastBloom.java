package org.nestyear.core.bloom;

import java.time.LocalDate;
import java.util.List;
import org.nestyear.core.bloom.fit.BloomChoice;
import org.nestyear.core.bloom.fit.BloomKind;
import org.nestyear.core.season.Plant;

/**
 * What a plant's dates of past years give for this season.
 *
 * @param plant the plant with its dates
 * @param dayOne the day from which the model counts days: 1 January in the north, 1 July in the south
 * @param choice the model, how it was chosen and how far off it was
 * @param unused dates that have no weather behind them and were left out
 * @param notRun kinds of model that the weather of this season cannot serve, and that were therefore not tried
 */
public record PastBloom(
        Plant plant, LocalDate dayOne, BloomChoice choice, List<LocalDate> unused, List<BloomKind> notRun) {
    public PastBloom {
        unused = List.copyOf(unused);
        notRun = List.copyOf(notRun);
    }

    /** True when there were enough dates to fit and compare models, the mean date among them. */
    public boolean isFitted() {
        return choice.reason() != BloomChoice.Reason.TOO_FEW_DATES;
    }

    /** The date of a day number of the model, its part of a day dropped. */
    public LocalDate date(double day) {
        return dayOne.plusDays((long) Math.floor(day) - 1);
    }
}
