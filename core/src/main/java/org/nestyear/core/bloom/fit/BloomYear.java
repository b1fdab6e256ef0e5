package org.nestyear.core.bloom.fit;

import java.time.LocalDate;
import java.util.Optional;
import org.nestyear.core.weather.DailyWeather;
import org.nestyear.core.weather.WeatherRecord;

/**
 * A date a keeper wrote down, and the weather that led to it.
 *
 * @param year the year whose midwinter went before
 * @param day number of the day, 1 for 1 January in the north and 1 July in the south
 * @param course the weather, which covers that day
 */
public record BloomYear(int year, int day, YearCourse course) {
    /** Numerical: a spring of which more days than this share were never measured says nothing about a date. */
    private static final double MOST_MISSING = 0.1;

    /** The year of a date; empty when the weather record does not cover it from midwinter to that date. */
    public static Optional<BloomYear> of(LocalDate bloom, WeatherRecord record, YearCourses courses) {
        int year = courses.yearOf(bloom);
        int day = (int) (bloom.toEpochDay() - courses.dayOne(year).toEpochDay()) + 1;
        return courses.of(record, year)
                .filter(course -> course.lastDay() > day)
                .map(course -> new BloomYear(year, day, course));
    }

    /**
     * The year of a date, its weather taken from a record with filled gaps.
     *
     * @param measured the same record with its gaps
     * @return empty when the record does not cover it, or too much of its weather was filled
     */
    public static Optional<BloomYear> of(
            LocalDate bloom, WeatherRecord measured, WeatherRecord filled, YearCourses courses) {
        return isMeasured(measured, courses.dayOne(courses.yearOf(bloom)), bloom)
                ? of(bloom, filled, courses)
                : Optional.empty();
    }

    /** True when at most a tenth of the days from one day to another, both included, has no temperatures. */
    public static boolean isMeasured(WeatherRecord record, LocalDate from, LocalDate to) {
        int missing = 0;
        for (LocalDate date = from; !date.isAfter(to); date = date.plusDays(1)) {
            missing += record.find(date).filter(DailyWeather::hasTemperatures).isPresent() ? 0 : 1;
        }
        return missing <= MOST_MISSING * (to.toEpochDay() - from.toEpochDay() + 1);
    }
}
