package org.nestyear.core.bloom.fit;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * So many days after, or before, the bloom of the spring index.
 *
 * @param daysAfter mean distance from the index, d; negative when the plant is earlier
 */
public record SpringIndexDate(double daysAfter) implements BloomModel {
    @Override
    public BloomKind kind() {
        return BloomKind.SPRING_INDEX;
    }

    @Override
    public OptionalDouble day(YearCourse course) {
        OptionalDouble index = course.springDay();
        return index.isPresent() ? OptionalDouble.of(index.getAsDouble() + daysAfter) : index;
    }

    /** The mean distance over the years that have an index; empty when none has. */
    static Optional<BloomModel> fit(List<BloomYear> years) {
        OptionalDouble mean = years.stream()
                .filter(year -> year.course().springBloom().isPresent())
                .mapToDouble(year -> year.day() - year.course().springDay().getAsDouble())
                .average();
        return mean.isPresent() ? Optional.of(new SpringIndexDate(mean.getAsDouble())) : Optional.empty();
    }
}
