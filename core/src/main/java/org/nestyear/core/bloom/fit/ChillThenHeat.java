package org.nestyear.core.bloom.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

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

    /** Every requirement, in the years whose weather reaches back to autumn. */
    static SumFit fit(List<BloomYear> years, FitLimits limits) {
        List<BloomYear> usable =
                years.stream().filter(year -> year.course().hasChill()).toList();
        List<SumFit.Shape> shapes = new ArrayList<>();
        for (double portions : limits.portions()) {
            shapes.add(new SumFit.Shape(
                    sum -> new ChillThenHeat(portions, sum),
                    usable.stream()
                            .map(year ->
                                    year.course().heatAfterChill(portions).filter(heat -> heat.firstDay() < year.day()))
                            .toList()));
        }
        return new SumFit(usable, shapes);
    }
}
