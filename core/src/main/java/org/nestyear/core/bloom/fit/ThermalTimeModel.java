package org.nestyear.core.bloom.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

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

    /**
     * The start and base with the smallest squared error, each with the sum that leaves no mean error. A start must lie
     * before every observed day.
     *
     * @return empty when no start and base fit every year
     */
    static Optional<BloomModel> fit(List<BloomYear> years, FitLimits limits) {
        double[] observed = years.stream().mapToDouble(BloomYear::day).toArray();
        @Nullable BloomModel best = null;
        double least = Double.POSITIVE_INFINITY;
        for (int start : limits.startDays()) {
            for (double base : limits.basesC()) {
                List<RunningSum> sums = sums(years, start, base);
                if (sums.size() < years.size()) {
                    continue;
                }
                double sum = RunningSum.withoutBias(sums, observed);
                double squares = RunningSum.squaredError(sums, observed, sum);
                if (squares < least) {
                    least = squares;
                    best = new ThermalTimeModel(start, base, sum);
                }
            }
        }
        return Optional.ofNullable(best);
    }

    private static List<RunningSum> sums(List<BloomYear> years, int start, double base) {
        List<RunningSum> sums = new ArrayList<>();
        for (BloomYear year : years) {
            if (year.day() > start) {
                year.course().degreeDays(start, base).ifPresent(sums::add);
            }
        }
        return sums;
    }
}
