package org.nestyear.core.bloom.fit;

import java.time.LocalDate;
import java.time.Month;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.nestyear.core.bloom.hourly.ChillPortions;
import org.nestyear.core.bloom.hourly.GrowingDegreeHours;
import org.nestyear.core.bloom.hourly.HourlySum;
import org.nestyear.core.bloom.spring.SpringDates;
import org.nestyear.core.bloom.spring.SpringIndex;
import org.nestyear.core.season.SeasonWeather;
import org.nestyear.core.source.ParameterReader;
import org.nestyear.core.weather.DailyWeather;
import org.nestyear.core.weather.HourlyTemperatures;
import org.nestyear.core.weather.WeatherRecord;

/** Makes the weather of a place ready for the bloom models, year by year. */
public final class YearCourses {
    /** Numerical: days that the spring index needs from 1 January. */
    private static final int SPRING_DAYS = 240;
    /** Numerical: days of a record that are looked at before and after midwinter. */
    private static final int DAYS_BEFORE = 183;

    private final HourlySum portions;
    private final HourlySum growing;
    private final SpringIndex springIndex;
    private final double latitudeDeg;
    private final int chillDay;
    private final double standardC;

    /**
     * @param bloomModels constants of the models
     * @param springIndex the spring index with its weights
     * @param latitudeDeg degrees north
     */
    public YearCourses(ParameterReader bloomModels, SpringIndex springIndex, double latitudeDeg) {
        this.portions = ChillPortions.of(bloomModels);
        this.growing = GrowingDegreeHours.of(bloomModels);
        this.springIndex = springIndex;
        this.latitudeDeg = latitudeDeg;
        this.standardC = bloomModels.value("standard_day_c");
        this.chillDay = (int) bloomModels.value("chill_count_day");
    }

    /** Day 1 of the year in which a plant blooms: 1 January in the north, 1 July in the south. */
    public LocalDate dayOne(int year) {
        return LocalDate.of(year, latitudeDeg < 0 ? Month.JULY : Month.JANUARY, 1);
    }

    /** The year whose midwinter goes before a bloom. */
    public int yearOf(LocalDate bloom) {
        return bloom.isBefore(dayOne(bloom.getYear())) ? bloom.getYear() - 1 : bloom.getYear();
    }

    /**
     * The unbroken run of days with temperatures around day 1 of a year; empty when day 1 itself is missing. Short gaps
     * are best filled beforehand, see {@link org.nestyear.core.weather.GapFilling}.
     */
    public Optional<YearCourse> of(WeatherRecord record, int year) {
        LocalDate one = dayOne(year);
        LocalDate first = one;
        while (first.isAfter(one.minusDays(DAYS_BEFORE)) && measured(record, first.minusDays(1))) {
            first = first.minusDays(1);
        }
        List<DailyWeather> days = new ArrayList<>();
        LocalDate end = one.plusYears(1).minusDays(DAYS_BEFORE / 2);
        for (LocalDate date = first; date.isBefore(end) && measured(record, date); date = date.plusDays(1)) {
            days.add(record.find(date).orElseThrow());
        }
        if (!measured(record, one)) {
            return Optional.empty();
        }
        return Optional.of(of(
                one,
                first,
                days.stream().mapToDouble(DailyWeather::minC).toArray(),
                days.stream().mapToDouble(DailyWeather::maxC).toArray()));
    }

    /** The course of one member of an ensemble, with the days that lead up to it. */
    public YearCourse of(SeasonWeather member) {
        return of(
                dayOne(member.frame().year()),
                member.date(0).minusDays(member.leadMinC().length),
                joined(member.leadMinC(), member.minC()),
                joined(member.leadMaxC(), member.maxC()));
    }

    private static double[] joined(double[] before, double[] after) {
        double[] all = Arrays.copyOf(before, before.length + after.length);
        System.arraycopy(after, 0, all, before.length, after.length);
        return all;
    }

    private static boolean measured(WeatherRecord record, LocalDate date) {
        return record.find(date).filter(DailyWeather::hasTemperatures).isPresent();
    }

    private YearCourse of(LocalDate one, LocalDate first, double[] minC, double[] maxC) {
        int firstDay = (int) (first.toEpochDay() - one.toEpochDay()) + 1;
        double[] meanC = new double[minC.length];
        for (int d = 0; d < meanC.length; d++) {
            meanC[d] = (minC[d] + maxC[d]) / 2;
        }
        double[] hours = HourlyTemperatures.fromDailyRange(first, minC, maxC, latitudeDeg);
        int skipped = chillDay - firstDay;
        double[] chill = skipped >= 0 && skipped < minC.length
                ? endsOfDays(portions.running(Arrays.copyOfRange(hours, 24 * skipped, hours.length)))
                : new double[0];
        return new YearCourse(
                firstDay,
                meanC,
                hours,
                standardC,
                endsOfDays(growing.running(hours)),
                chillDay,
                chill,
                springBloom(firstDay, minC, maxC));
    }

    private OptionalInt springBloom(int firstDay, double[] minC, double[] maxC) {
        int skipped = 1 - firstDay;
        if (latitudeDeg <= 0 || skipped < 0 || minC.length - skipped < SPRING_DAYS) {
            return OptionalInt.empty();
        }
        Optional<SpringDates> dates = springIndex.of(
                Arrays.copyOfRange(minC, skipped, minC.length),
                Arrays.copyOfRange(maxC, skipped, maxC.length),
                latitudeDeg);
        return dates.isPresent() ? OptionalInt.of(dates.get().bloom()) : OptionalInt.empty();
    }

    private static double[] endsOfDays(double[] running) {
        double[] ends = new double[running.length / 24];
        for (int d = 0; d < ends.length; d++) {
            ends[d] = running[24 * d + 24 - 1];
        }
        return ends;
    }
}
