package org.nestyear.core.bloom;

import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.nestyear.core.bloom.fit.YearCourse;
import org.nestyear.core.bloom.fit.YearCourses;
import org.nestyear.core.season.SeasonWeather;
import org.nestyear.core.stats.Quantiles;

/** On which day a plant's chosen model puts its full bloom in one weather member and another; each is run once. */
final class ModelDays {
    private static final double HALF = 0.5;

    private final PastBloom past;
    private final YearCourses courses;
    private final double medianDay;
    private final Map<SeasonWeather, Double> indices = Collections.synchronizedMap(new IdentityHashMap<>());

    /**
     * @param ensemble this season's members, at least one
     * @param season the same made ready for the models, in the same order
     */
    ModelDays(PastBloom past, YearCourses courses, List<SeasonWeather> ensemble, List<YearCourse> season) {
        this.past = past;
        this.courses = courses;
        double[] days = season.stream().mapToDouble(this::dayOrEnd).toArray();
        medianDay = Quantiles.of(days, HALF);
        for (int i = 0; i < days.length; i++) {
            indices.put(ensemble.get(i), index(ensemble.get(i), days[i]));
        }
    }

    PastBloom past() {
        return past;
    }

    /**
     * The day of full bloom as an index of the member's days, with its part of a day; the number of its days when the
     * bloom does not come. A past year that the model cannot run, because its weather begins after the autumn, gets the
     * middle of this season's members.
     */
    double index(SeasonWeather member) {
        return indices.computeIfAbsent(member, other -> {
            YearCourse course = courses.of(other);
            return index(other, canRun(course) ? dayOrEnd(course) : medianDay);
        });
    }

    private boolean canRun(YearCourse course) {
        return switch (past.choice().model().kind()) {
            case CHILL_THEN_HEAT -> course.hasChill();
            case SPRING_INDEX -> course.springBloom().isPresent();
            case MEAN_DATE, THERMAL_TIME, STANDARD_DAYS -> true;
        };
    }

    private double dayOrEnd(YearCourse course) {
        OptionalDouble day = past.choice().model().day(course);
        return day.isPresent() ? day.getAsDouble() : course.lastDay() + 1.0;
    }

    private double index(SeasonWeather member, double day) {
        return day - 1 + member.index(past.dayOne());
    }
}
