package org.nestyear.checks.scenario;

import java.time.LocalDate;
import java.time.MonthDay;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.nestyear.core.place.Site;
import org.nestyear.core.plan.Plan;
import org.nestyear.core.plan.Planner;
import org.nestyear.core.season.Batch;
import org.nestyear.core.season.BloomDates;
import org.nestyear.core.season.CommunityBloom;
import org.nestyear.core.season.Goal;
import org.nestyear.core.season.NestKind;
import org.nestyear.core.season.Nests;
import org.nestyear.core.season.Plant;
import org.nestyear.core.season.SeasonInputs;
import org.nestyear.core.season.Wintered;
import org.nestyear.core.species.Species;
import org.nestyear.core.weather.DailyWeather;
import org.nestyear.core.weather.WeatherRecord;
import org.nestyear.data.CatalogueFiles;

/**
 * A season read from a small table of text: a line a fact, cells parted by {@code |}. Under {@code season} and
 * {@code forecast} stand weather anchors: date, minimum and maximum in °C, rain in mm. Past years are invented, all at
 * one place on the Rhine plain, some later and some warmer than the usual year.
 */
final class SeasonTable {
    /** A usual year: date, minimum °C, maximum °C, rain mm. Invented, near the climate of south-west Germany. */
    private static final String USUAL = """
            01-15 | -2 |  4 | 1
            02-15 | -1 |  6 | 0
            03-15 |  2 | 11 | 0
            04-01 |  4 | 14 | 1
            04-20 |  5 | 16 | 0
            05-10 |  8 | 20 | 0
            06-01 | 11 | 23 | 2
            07-15 | 14 | 26 | 0
            09-01 | 12 | 23 | 0
            11-01 |  4 | 11 | 1
            12-15 |  0 |  5 | 1
            """;
    /** Past years: year, days later, °C warmer. */
    private static final String PAST = """
            2004 |  4 | -0.3
            2005 |  0 |  0.2
            2006 |  9 | -0.8
            2007 | -8 |  1.2
            2008 |  2 |  0.0
            2009 | -2 |  0.5
            2010 |  5 | -0.6
            2011 | -6 |  0.8
            2012 | -1 |  0.1
            2013 | 11 | -1.0
            2014 | -9 |  1.0
            """;

    private static final int LAST_PAST_YEAR = 2014;

    private final Map<String, List<String>> facts = new HashMap<>();
    private final DrawnWeather season = new DrawnWeather();
    private final DrawnWeather forecast = new DrawnWeather();

    private SeasonTable(String text) {
        DrawnWeather part = season;
        for (String line : text.lines().toList()) {
            List<String> cells = cells(line);
            String key = cells.get(0);
            if (key.equals("season")) {
                part = season;
            } else if (key.equals("forecast")) {
                part = forecast;
            } else if (Character.isDigit(key.charAt(0))) {
                part.add(LocalDate.parse(key), number(cells, 1), number(cells, 2), number(cells, 3));
            } else {
                facts.put(key, cells);
            }
        }
    }

    private static List<String> cells(String line) {
        return Arrays.stream(line.split("\\|", -1)).map(String::strip).toList();
    }

    private static double number(List<String> cells, int i) {
        return Double.parseDouble(cells.get(i).split(" ", -1)[0]);
    }

    private List<String> fact(String key) {
        List<String> cells = facts.get(key);
        if (cells == null) {
            throw new IllegalArgumentException("the table has no line \"" + key + "\"");
        }
        return cells;
    }

    /** The season of a table. */
    static SeasonInputs read(String text) {
        return new SeasonTable(text).inputs();
    }

    /** The plan of a table. */
    static Plan plan(String text) {
        return plan(read(text));
    }

    /** The plan of a season. */
    static Plan plan(SeasonInputs inputs) {
        Species species =
                CatalogueFiles.load().find(inputs.batches().get(0).species()).orElseThrow();
        return Planner.plan(inputs, species);
    }

    private SeasonInputs inputs() {
        LocalDate today = LocalDate.parse(fact("today").get(1));
        List<String> tunnels = fact("tunnels");
        return new SeasonInputs(
                new Site("Reed Bank", 48.9, 8.7, 250, ZoneOffset.ofHours(1), null, List.of()),
                weather(today),
                forecast.isEmpty() ? null : new WeatherRecord(forecast.days(forecast.first(), forecast.last())),
                List.of(bees()),
                List.of(new Nests(
                        NestKind.TUBE, true, number(tunnels, 2), number(tunnels, 3), (int) number(tunnels, 1))),
                List.of(new Plant(fact("bloom").get(1), 0, true, bloom())),
                facts.containsKey("other") ? other() : null,
                Goal.BOTH,
                today);
    }

    /** Two dates, or a sum above 0 °C from a day of the year to the middle of bloom and the days it lasts. */
    private BloomDates bloom() {
        List<String> cells = fact("bloom");
        if (!cells.get(2).contains("°C·d")) {
            return new BloomDates.Dated(LocalDate.parse(cells.get(2)), LocalDate.parse(cells.get(3)));
        }
        String from = cells.get(2).substring(cells.get(2).lastIndexOf(' ') + 1);
        return new BloomDates.ThermalTime(MonthDay.parse("--" + from), 0, number(cells, 2), (int) number(cells, 3));
    }

    private Batch bees() {
        List<String> cells = fact("bees");
        Wintered wintered = Arrays.stream(Wintered.values())
                .filter(w -> w.word().equals(cells.get(4)))
                .findFirst()
                .orElseThrow();
        boolean cold = wintered == Wintered.FRIDGE;
        return new Batch(
                cells.get(1),
                "local",
                (int) number(cells, 2),
                (int) number(cells, 3),
                wintered,
                cold ? number(cells, 5) : null,
                cold ? number(cells, 6) : null);
    }

    private CommunityBloom other() {
        List<String> cells = fact("other");
        return new CommunityBloom(
                LocalDate.parse(cells.get(1)),
                LocalDate.parse(cells.get(2)),
                LocalDate.parse(cells.get(3)),
                number(cells, 4));
    }

    private WeatherRecord weather(LocalDate today) {
        DrawnWeather usual = new DrawnWeather();
        USUAL.lines()
                .map(SeasonTable::cells)
                .forEach(c -> usual.add(LocalDate.parse("2000-" + c.get(0)), number(c, 1), number(c, 2), number(c, 3)));
        List<DailyWeather> days = new ArrayList<>();
        for (List<String> year : PAST.lines().map(SeasonTable::cells).toList()) {
            int y = (int) number(year, 0);
            LocalDate to = y == LAST_PAST_YEAR ? season.first().minusDays(1) : LocalDate.of(y, 12, 31);
            days.addAll(usual.repeated(y - 1, y + 1, (int) number(year, 1), number(year, 2))
                    .days(LocalDate.of(y, 1, 1), to));
        }
        days.addAll(season.days(season.first(), today));
        return new WeatherRecord(days);
    }
}
