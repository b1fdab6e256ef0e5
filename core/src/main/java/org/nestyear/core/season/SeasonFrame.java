package org.nestyear.core.season;

import java.time.LocalDate;
import java.time.Month;
import java.time.temporal.ChronoUnit;

/**
 * The days of one season, counted from 0: from 1 November of the year before to 31 August.
 *
 * @param start day 0
 * @param year the year in which the bees fly
 * @param days how many days the season has
 */
public record SeasonFrame(LocalDate start, int year, int days) {
    /** The season a keeper plans for on a given day: this year's until the end of August, then next year's. */
    public static SeasonFrame planningFrom(LocalDate today) {
        return ofYear(today.getMonthValue() <= Month.AUGUST.getValue() ? today.getYear() : today.getYear() + 1);
    }

    /** The season in which bees fly in {@code year}. */
    public static SeasonFrame ofYear(int year) {
        LocalDate start = LocalDate.of(year - 1, Month.NOVEMBER, 1);
        LocalDate end = LocalDate.of(year, Month.SEPTEMBER, 1);
        return new SeasonFrame(start, year, (int) ChronoUnit.DAYS.between(start, end));
    }

    /** The number of a date in this season; negative or beyond the end for dates outside it. */
    public int index(LocalDate date) {
        return (int) ChronoUnit.DAYS.between(start, date);
    }

    /** The date of a day number. */
    public LocalDate date(int index) {
        return start.plusDays(index);
    }

    /** The last day of the season. */
    public LocalDate end() {
        return date(days - 1);
    }

    /** The date of the {@code dayOfYear}-th day, 1 to 366, of the year that this season's day belongs to. */
    public LocalDate ofDayOfYear(double dayOfYear) {
        LocalDate inYear = LocalDate.of(year, Month.JANUARY, 1).plusDays(Math.round(dayOfYear) - 1);
        return inYear.isAfter(end()) ? inYear.minusYears(1) : inYear;
    }

    /** The same calendar day in another year's season; 29 February becomes 28 February where there is none. */
    public LocalDate sameDayIn(int otherYear, LocalDate date) {
        return date.plusYears((long) otherYear - year);
    }
}
