package org.nestyear.core.weather;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;

/**
 * Fills missing temperatures, and says where and how. Never done silently: callers show the fillings.
 *
 * <p>Up to three days between two measured ones lie on a straight line. Longer runs, and runs at an end of the record,
 * take the mean of the same calendar day in the other years (29 February: of 28 February where no other leap year has
 * it). A temperature that was measured is kept even if its partner was not. Rain, wind and radiation are not touched:
 * what is missing stays NaN.
 *
 * <p>Stateless; may be called from many threads.
 */
public final class GapFilling {
    /** A numerical choice, not a biological one: the longest run a straight line may bridge, in days. */
    private static final int LONGEST_LINE_DAYS = 3;

    private GapFilling() {}

    /**
     * The record with every gap filled.
     *
     * @throws IllegalArgumentException if a gap is too long for a line and no other year has measured its days
     */
    public static FilledWeather fill(WeatherRecord record) {
        List<Gap> gaps = record.gaps();
        if (gaps.isEmpty()) {
            return new FilledWeather(record, List.of());
        }
        Map<LocalDate, DailyWeather> days = new TreeMap<>();
        record.days().forEach(day -> days.put(day.date(), day));
        List<Filling> fillings = new ArrayList<>();
        for (Gap gap : gaps) {
            boolean inside = gap.from().isAfter(record.first()) && gap.to().isBefore(record.last());
            if (inside && gap.days() <= LONGEST_LINE_DAYS) {
                fillByLine(record, gap, days);
                fillings.add(new Filling(gap, Filling.Method.LINEAR, 0));
            } else {
                fillings.add(new Filling(gap, Filling.Method.CLIMATOLOGY, fillByClimate(record, gap, days)));
            }
        }
        return new FilledWeather(new WeatherRecord(days.values()), fillings);
    }

    private static void fillByLine(WeatherRecord record, Gap gap, Map<LocalDate, DailyWeather> days) {
        DailyWeather before = record.find(gap.from().minusDays(1)).orElseThrow();
        DailyWeather after = record.find(gap.to().plusDays(1)).orElseThrow();
        double steps = gap.days() + 1.0;
        int step = 1;
        for (LocalDate date = gap.from(); !date.isAfter(gap.to()); date = date.plusDays(1)) {
            double share = step / steps;
            put(
                    days,
                    date,
                    before.minC() + share * (after.minC() - before.minC()),
                    before.maxC() + share * (after.maxC() - before.maxC()));
            step++;
        }
    }

    /** Fills from the other years and returns the fewest years that stood behind any of the days. */
    private static int fillByClimate(WeatherRecord record, Gap gap, Map<LocalDate, DailyWeather> days) {
        int fewest = Integer.MAX_VALUE;
        for (LocalDate date = gap.from(); !date.isAfter(gap.to()); date = date.plusDays(1)) {
            List<DailyWeather> others = sameDayInOtherYears(record, date);
            if (others.isEmpty()) {
                throw new IllegalArgumentException("the weather record lacks temperatures from " + gap.from() + " to "
                        + gap.to() + ", and no other year of it has measured " + date + "'s calendar day;"
                        + " fill these days from another station or use a record of more years");
            }
            fewest = Math.min(fewest, others.size());
            put(days, date, mean(others, DailyWeather::minC), mean(others, DailyWeather::maxC));
        }
        return fewest;
    }

    private static List<DailyWeather> sameDayInOtherYears(WeatherRecord record, LocalDate date) {
        List<DailyWeather> exact = new ArrayList<>();
        List<DailyWeather> dayBefore = new ArrayList<>();
        for (int year = record.first().getYear(); year <= record.last().getYear(); year++) {
            if (year == date.getYear()) {
                continue;
            }
            // withYear turns 29 February into the 28th in ordinary years.
            LocalDate other = date.withYear(year);
            List<DailyWeather> list = other.getDayOfMonth() == date.getDayOfMonth() ? exact : dayBefore;
            record.find(other).filter(DailyWeather::hasTemperatures).ifPresent(list::add);
        }
        return exact.isEmpty() ? dayBefore : exact;
    }

    private static double mean(List<DailyWeather> days, ToDoubleFunction<DailyWeather> value) {
        double sum = 0;
        for (DailyWeather day : days) {
            sum += value.applyAsDouble(day);
        }
        return sum / days.size();
    }

    private static void put(Map<LocalDate, DailyWeather> days, LocalDate date, double filledMinC, double filledMaxC) {
        DailyWeather known = days.get(date);
        if (known == null) {
            days.put(date, new DailyWeather(date, filledMinC, filledMaxC, Double.NaN, Double.NaN, Double.NaN));
            return;
        }
        double minC = known.minC();
        double maxC = known.maxC();
        // A measured value outranks a filled one, so the filled one gives way where the two would cross.
        if (Double.isNaN(minC)) {
            minC = Double.isNaN(maxC) ? filledMinC : Math.min(filledMinC, maxC);
        }
        if (Double.isNaN(maxC)) {
            maxC = Math.max(filledMaxC, minC);
        }
        days.put(date, new DailyWeather(date, minC, maxC, known.rainMm(), known.windMs(), known.radiationMjM2()));
    }
}
