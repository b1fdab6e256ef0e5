package org.nestyear.core.bloom.fit;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The same date every year: the rival that any model must beat.
 *
 * @param day mean of the observed days
 */
public record MeanDate(double day) implements BloomModel {
    @Override
    public BloomKind kind() {
        return BloomKind.MEAN_DATE;
    }

    @Override
    public OptionalDouble day(YearCourse course) {
        return OptionalDouble.of(day);
    }

    /** The mean of some years. */
    static Optional<BloomModel> fit(List<BloomYear> years) {
        OptionalDouble mean = years.stream().mapToInt(BloomYear::day).average();
        return mean.isPresent() ? Optional.of(new MeanDate(mean.getAsDouble())) : Optional.empty();
    }
}
