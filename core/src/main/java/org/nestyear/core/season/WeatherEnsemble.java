package org.nestyear.core.season;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.nestyear.core.weather.DailyWeather;
import org.nestyear.core.weather.WeatherRecord;

/**
 * Possible courses of a season, one for each past year: what was measured up to today, then the forecast, then that
 * year's weather. Hydrology calls the method ensemble streamflow prediction. No year is ever replaced by a mean.
 *
 * @param members one a past year, in order of year
 */
public record WeatherEnsemble(List<SeasonWeather> members) {
    public WeatherEnsemble {
        members = List.copyOf(members);
    }

    /** How many real years stand behind it. */
    public int realYears() {
        return members.size();
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
        return new WeatherEnsemble(members);
    }

    /** Each past year on its own, as if nothing were known of this season. */
    public static WeatherEnsemble wholeYears(SeasonFrame frame, WeatherRecord known, LocalDate from) {
        List<SeasonWeather> members = new ArrayList<>();
        for (int year : pastYears(frame, known)) {
            SeasonWeather.assemble(frame, year, from, date -> known.find(frame.sameDayIn(year, date)))
                    .ifPresent(members::add);
        }
        return new WeatherEnsemble(members);
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
