package org.nestyear.core.release;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.nestyear.core.season.Batch;
import org.nestyear.core.season.Wintered;

/**
 * The cocoons to be released and the cold behind them.
 *
 * @param batch the bees
 * @param today day on which {@code batch.chillDays()} was counted
 * @param coldStart day from which bees at air temperature count their cold
 */
record Stock(Batch batch, LocalDate today, LocalDate coldStart) {

    /** Cocoons kept at the temperature of a cold store until they are put out. */
    boolean isInFridge() {
        return batch.wintered() == Wintered.FRIDGE;
    }

    /** Loose cocoons that wait in a release box, and not in the nests they grew up in. */
    boolean isBoxed() {
        return batch.wintered() == Wintered.FRIDGE || batch.wintered() == Wintered.SHED;
    }

    /** Days of chill in the cold store by {@code today}. */
    double chillDays() {
        return told(batch.chillDays());
    }

    /** Temperature of the cold store, °C. */
    double chillC() {
        return told(batch.chillC());
    }

    private static double told(@Nullable Double value) {
        if (value == null) {
            throw new IllegalStateException("a fridge batch without its chill");
        }
        return value;
    }
}
