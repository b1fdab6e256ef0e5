package org.nestyear.core.bloom.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/**
 * First a requirement of chill portions is met, then growing degree hours are counted up to a sum.
 *
 * @param portions chill portions needed before warmth counts
 * @param degreeHours growing degree hours from then to bloom, °C·h
 */
public record ChillThenHeat(double portions, double degreeHours) implements BloomModel {
    @Override
    public BloomKind kind() {
        return BloomKind.CHILL_THEN_HEAT;
    }

    @Override
    public OptionalDouble day(YearCourse course) {
        Optional<RunningSum> heat = course.heatAfterChill(portions);
        return heat.isPresent() ? heat.get().dayOf(degreeHours) : OptionalDouble.empty();
    }

    /**
     * The requirement with the smallest squared error, with the sum that leaves no mean error. Years whose weather does
     * not reach back to autumn are left out.
     *
     * @return empty when fewer than two years are left or no requirement is met before bloom in all of them
     */
    static Optional<BloomModel> fit(List<BloomYear> years, FitLimits limits) {
        List<BloomYear> usable =
                years.stream().filter(year -> year.course().hasChill()).toList();
        if (usable.size() < 2) {
            return Optional.empty();
        }
        double[] observed = usable.stream().mapToDouble(BloomYear::day).toArray();
        @Nullable BloomModel best = null;
        double least = Double.POSITIVE_INFINITY;
        for (double portions : limits.portions()) {
            List<RunningSum> sums = new ArrayList<>();
            for (BloomYear year : usable) {
                year.course()
                        .heatAfterChill(portions)
                        .filter(heat -> heat.firstDay() < year.day())
                        .ifPresent(sums::add);
            }
            if (sums.size() < usable.size()) {
                continue;
            }
            double sum = RunningSum.withoutBias(sums, observed);
            double squares = RunningSum.squaredError(sums, observed, sum);
            if (squares < least) {
                least = squares;
                best = new ChillThenHeat(portions, sum);
            }
        }
        return Optional.ofNullable(best);
    }
}
