package org.nestyear.core.release;

import java.time.LocalDate;
import java.time.MonthDay;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import org.nestyear.core.place.Site;
import org.nestyear.core.season.Batch;
import org.nestyear.core.season.BloomDates;
import org.nestyear.core.season.Goal;
import org.nestyear.core.season.NestKind;
import org.nestyear.core.season.Nests;
import org.nestyear.core.season.Plant;
import org.nestyear.core.season.SeasonInputs;
import org.nestyear.core.season.Wintered;
import org.nestyear.core.species.Species;
import org.nestyear.core.stats.Draws;
import org.nestyear.core.weather.DailyWeather;
import org.nestyear.core.weather.WeatherRecord;
import org.nestyear.data.CatalogueFiles;

/** A season on invented weather: yearly waves with noise that lasts for days. */
final class BenchSeason {
    static final LocalDate TODAY = LocalDate.of(2011, 2, 1);
    static final Species BEES = CatalogueFiles.load().find("Osmia lignaria").orElseThrow();

    private static final double LATITUDE = 40;
    private static final double LONGITUDE = -75;
    private static final double MEAN_C = 12;
    private static final double WAVE_C = 12;
    private static final double COLDEST_DAY = 20;
    private static final double DAYS_IN_YEAR = 365.25;
    private static final double LASTS = 0.7;
    private static final double NOISE_C = 3;
    private static final double RANGE_C = 10;
    private static final double WET_SHARE = 0.3;

    private static final int MALES = 900;

    private BenchSeason() {}

    /** So many whole years before {@link #TODAY} and the days to it. */
    static WeatherRecord weather(int years) {
        Draws draws = new Draws(1);
        List<DailyWeather> days = new ArrayList<>();
        double anomaly = 0;
        LocalDate first = LocalDate.of(TODAY.getYear() - years, 1, 1);
        for (LocalDate date = first; !date.isAfter(TODAY); date = date.plusDays(1)) {
            anomaly = LASTS * anomaly + NOISE_C * draws.normal();
            double wave = WAVE_C * Math.cos(2 * Math.PI * (date.getDayOfYear() - COLDEST_DAY) / DAYS_IN_YEAR);
            double mean = MEAN_C - wave + anomaly;
            double rain = draws.uniform() < WET_SHARE ? 2 + draws.uniform() : 0;
            days.add(new DailyWeather(date, mean - RANGE_C / 2, mean + RANGE_C / 2, rain, Double.NaN, Double.NaN));
        }
        return new WeatherRecord(days);
    }

    /** Bees in the fridge and so many free tunnels. */
    static SeasonInputs inputs(int years, int tunnels) {
        return inputs(years, tunnels, MALES);
    }

    /** The same with so many males. */
    static SeasonInputs inputs(int years, int tunnels, int males) {
        return new SeasonInputs(
                new Site("Invented", LATITUDE, LONGITUDE, 0, ZoneOffset.UTC, null, List.of()),
                weather(years),
                null,
                List.of(new Batch(BEES.latinName(), "local", 500, males, Wintered.FRIDGE, 90.0, 4.0)),
                List.of(new Nests(NestKind.TUBE, true, 8, 152, tunnels)),
                List.of(new Plant("cherry", 0, true, new BloomDates.ThermalTime(MonthDay.of(2, 1), 0, 424, 18))),
                null,
                Goal.BOTH,
                TODAY);
    }

    static ModelSettings settings(SeasonInputs inputs) {
        return ModelSettings.of(BEES.parameters(), inputs.nests());
    }

    static SeasonSetup setup(SeasonInputs inputs) {
        return new SeasonSetup(inputs, inputs.weather(), BEES.parameters(), settings(inputs));
    }
}
