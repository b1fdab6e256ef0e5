package org.nestyear.core.bloom.fit;

import java.time.LocalDate;
import java.util.Optional;
import org.nestyear.core.weather.WeatherRecord;

/**
 * A date a keeper wrote down, and the weather that led to it.
 *
 * @param year the year whose midwinter went before
 * @param day number of the day, 1 for 1 January in the north and 1 July in the south
 * @param course the weather, which covers that day
 */
public record BloomYear(int year, int day, YearCourse course) {
    /** The year of a date; empty when the weather record does not cover it from midwinter to that date. */
    public static Optional<BloomYear> of(LocalDate bloom, WeatherRecord record, YearCourses courses) {
        int year = courses.yearOf(bloom);
        int day = (int) (bloom.toEpochDay() - courses.dayOne(year).toEpochDay()) + 1;
        return courses.of(record, year)
                .filter(course -> course.lastDay() > day)
                .map(course -> new BloomYear(year, day, course));
    }
}
