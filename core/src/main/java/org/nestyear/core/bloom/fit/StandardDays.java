package org.nestyear.core.bloom.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Bloom on the day when the days since a start, each counted for as much as its hours are warm, reach a sum: the "days
 * transformed to standard temperature" long used for flowering cherries (Konno &amp; Sugihara 1986). Warmth speeds
 * development as an exponential without a threshold, so cold hours count for little and are never nothing.
 *
 * @param startDay number of the first day counted
 * @param slope how steeply warmth speeds development, 1/°C; an hour counts exp(slope · (T − standard))
 * @param sum standard days
 */
public record StandardDays(int startDay, double slope, double sum) implements BloomModel {
    @Override
    public BloomKind kind() {
        return BloomKind.STANDARD_DAYS;
    }

    @Override
    public OptionalDouble day(YearCourse course) {
        Optional<RunningSum> days = course.standardDays(startDay, slope);
        return days.isPresent() ? days.get().dayOf(sum) : OptionalDouble.empty();
    }

    /** Every start and slope. */
    static SumFit fit(List<BloomYear> years, FitLimits limits) {
        List<SumFit.Shape> shapes = new ArrayList<>();
        for (int start : limits.startDays()) {
            for (double slope : limits.slopes()) {
                shapes.add(new SumFit.Shape(
                        sum -> new StandardDays(start, slope, sum),
                        years.stream()
                                .map(year ->
                                        year.course().standardDays(start, slope).filter(days -> start < year.day()))
                                .toList()));
            }
        }
        return new SumFit(years, shapes);
    }
}
