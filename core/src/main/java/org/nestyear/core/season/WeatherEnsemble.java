package org.nestyear.core.season;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.nestyear.core.weather.DailyWeather;
import org.nestyear.core.weather.WeatherGenerator;
import org.nestyear.core.weather.WeatherRecord;

/**
 * Possible courses of a season, one for each past year: what was measured up to today, then the forecast, then that
 * year's weather. Hydrology calls the method ensemble streamflow prediction. No year is ever replaced by a mean. Where
 * years are few it can be filled up with invented weather, which is never counted as a year.
 *
 * @param members one a past year, in order of year, then the invented ones
 * @param realYears how many of them are past years
 */
public record WeatherEnsemble(List<SeasonWeather> members, int realYears) {
    public WeatherEnsemble {
        members = List.copyOf(members);
    }

    /**
     * This season continued by each past year.
     *
     * @param known the record with nothing after {@code today}
     * @param forecast days after today, or null
     * @param from first day needed
     */
    public static WeatherEnsemble continuing(
            SeasonFrame frame, WeatherRecord known, @Nullable WeatherRecord forecast, LocalDate today, LocalDate from) {
        List<SeasonWeather> members = new ArrayList<>();
        for (int year : pastYears(frame, known)) {
            SeasonWeather.assemble(frame, year, from, date -> {
                        if (!date.isAfter(today)) {
                            Optional<DailyWeather> measured = known.find(date);
                            if (measured.isPresent()) {
                                return measured;
                            }
                        } else if (forecast != null && forecast.find(date).isPresent()) {
                            return forecast.find(date);
                        }
                        return known.find(frame.sameDayIn(year, date));
                    })
                    .ifPresent(members::add);
        }
        return new WeatherEnsemble(members, members.size());
    }

    /**
     * The same filled up with seasons that go on from the last known day with weather invented after the record; unchanged
     * where it has members enough or none, or the record is too short to learn from.
     *
     * @param least members wanted
     */
    public WeatherEnsemble enlarged(
            int least, WeatherRecord known, @Nullable WeatherRecord forecast, LocalDate today, LocalDate from) {
        WeatherRecord last = forecast == null ? known : forecast;
        DailyWeather end = last.find(last.last()).orElse(null);
        if (members.isEmpty() || end == null || !end.hasTemperatures() || !WeatherGenerator.canFit(known)) {
            return this;
        }
        SeasonFrame frame = members.get(0).frame();
        WeatherGenerator generator = WeatherGenerator.fit(known);
        List<SeasonWeather> all = new ArrayList<>(members);
        for (int seed = 1; all.size() < least && seed <= least; seed++) {
            Optional<WeatherRecord> invented = end.date().isBefore(frame.end())
                    ? Optional.of(generator.continuing(end, frame.end(), seed))
                    : Optional.empty();
            SeasonWeather.assemble(frame, frame.year(), from, date -> {
                        Optional<DailyWeather> told = !date.isAfter(today)
                                ? known.find(date)
                                : Optional.ofNullable(forecast).flatMap(f -> f.find(date));
                        return told.isPresent() ? told : invented.flatMap(record -> record.find(date));
                    })
                    .ifPresent(all::add);
        }
        return new WeatherEnsemble(all, realYears);
    }

    /** Each past year on its own, as if nothing were known of this season. */
    public static WeatherEnsemble wholeYears(SeasonFrame frame, WeatherRecord known, LocalDate from) {
        List<SeasonWeather> members = new ArrayList<>();
        for (int year : pastYears(frame, known)) {
            SeasonWeather.assemble(frame, year, from, date -> known.find(frame.sameDayIn(year, date)))
                    .ifPresent(members::add);
        }
        return new WeatherEnsemble(members, members.size());
    }

    private static SortedSet<Integer> pastYears(SeasonFrame frame, WeatherRecord known) {
        SortedSet<Integer> years = new TreeSet<>();
        for (int year = known.first().getYear(); year <= known.last().getYear(); year++) {
            if (year < frame.year()) {
                years.add(year);
            }
        }
        return years;
    }
}
