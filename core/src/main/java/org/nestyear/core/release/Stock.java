package org.nestyear.core.release;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import org.jspecify.annotations.Nullable;
import org.nestyear.core.emergence.EmergenceSettings;
import org.nestyear.core.emergence.Storage;
import org.nestyear.core.season.Batch;
import org.nestyear.core.season.SeasonWeather;
import org.nestyear.core.season.Wintered;
import org.nestyear.core.winter.ColdRecord;

/**
 * The cocoons to be released and the cold behind them.
 *
 * @param batch the bees
 * @param today day on which {@code batch.chillDays()} was counted
 * @param coldStart day from which bees at air temperature count their cold
 * @param chillLimitC days colder than this count as chill, °C
 */
record Stock(Batch batch, LocalDate today, LocalDate coldStart, double chillLimitC) {

    /** Cocoons kept at the temperature of a cold store until they are put out. */
    boolean isInFridge() {
        return batch.wintered() == Wintered.FRIDGE;
    }

    /** What one sex has behind it when put out on day {@code release} of a member. */
    Storage storage(EmergenceSettings settings, SeasonWeather member, int release) {
        if (isInFridge()) {
            return Storage.cold(settings, chillC(), chillDays(member, release), release);
        }
        return Storage.outdoors(Math.max(0, member.index(coldStart)), release);
    }

    /** Days of chill by the time of release on day {@code release} of a member. */
    double chillDays(SeasonWeather member, int release) {
        if (isInFridge()) {
            double more = ChronoUnit.DAYS.between(today, member.date(release));
            return Math.max(0, told(batch.chillDays()) + more);
        }
        double[] mean = new double[member.days()];
        for (int d = 0; d < mean.length; d++) {
            mean[d] = (member.minC()[d] + member.maxC()[d]) / 2;
        }
        return ColdRecord.chillDays(mean, member.index(coldStart), release, chillLimitC);
    }

    private double chillC() {
        return told(batch.chillC());
    }

    private static double told(@Nullable Double value) {
        if (value == null) {
            throw new IllegalStateException("a fridge batch without its chill");
        }
        return value;
    }
}
