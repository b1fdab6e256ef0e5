package org.nestyear.core.bloom.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Bloom on the day when the degree-days from a start reach a sum.
 *
 * @param startDay number of the first day counted
 * @param baseC base temperature, °C; a day counts its mean of minimum and maximum above it
 * @param sum degree-days, °C·d
 */
public record ThermalTimeModel(int startDay, double baseC, double sum) implements BloomModel {
    @Override
    public BloomKind kind() {
        return BloomKind.THERMAL_TIME;
    }

    @Override
    public OptionalDouble day(YearCourse course) {
        Optional<RunningSum> warmth = course.degreeDays(startDay, baseC);
        return warmth.isPresent() ? warmth.get().dayOf(sum) : OptionalDouble.empty();
    }

    /** Every start and base. */
    static SumFit fit(List<BloomYear> years, FitLimits limits) {
        List<SumFit.Shape> shapes = new ArrayList<>();
        for (int start : limits.startDays()) {
            for (double base : limits.basesC()) {
                shapes.add(new SumFit.Shape(
                        sum -> new ThermalTimeModel(start, base, sum),
                        years.stream()
                                .map(year ->
                                        year.course().degreeDays(start, base).filter(warmth -> start < year.day()))
                                .toList()));
            }
        }
        return new SumFit(years, shapes);
    }
}
