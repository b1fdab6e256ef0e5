package org.nestyear.app.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.nestyear.core.place.HorizonPoint;
import org.nestyear.core.place.Site;
import org.nestyear.core.season.Batch;
import org.nestyear.core.season.BloomDates;
import org.nestyear.core.season.CommunityBloom;
import org.nestyear.core.season.Goal;
import org.nestyear.core.season.NestKind;
import org.nestyear.core.season.Nests;
import org.nestyear.core.season.Plant;
import org.nestyear.core.season.SeasonInputs;
import org.nestyear.core.season.Wintered;
import org.nestyear.core.weather.DailyWeather;
import org.nestyear.core.weather.WeatherRecord;
import org.nestyear.data.DayOfPlan;
import org.nestyear.data.Season;
import org.nestyear.data.SeasonFile;
import org.nestyear.data.TextSource;

class DemoReadingTest {
    private static final TextSource DEMO = TextSource.ofResource(DemoReadingTest.class, "/demo/tansy-lane.toml");

    @Test
    void theWholeDemoIsRead() {
        Season season = SeasonFile.read(DEMO, DayOfPlan.of(LocalDate.EPOCH));
        SeasonInputs inputs = season.inputs();

        assertThat(inputs)
                .isEqualTo(new SeasonInputs(
                        new Site(
                                "Tansy Lane orchard",
                                40.78,
                                -73.97,
                                40,
                                ZoneId.of("America/New_York"),
                                135.0,
                                List.of(new HorizonPoint(60, 12), new HorizonPoint(120, 5), new HorizonPoint(200, 20))),
                        inputs.weather(),
                        null,
                        List.of(new Batch("Osmia lignaria", "local", 120, 210, Wintered.FRIDGE, 150.0, 3.0)),
                        List.of(new Nests(NestKind.TUBE, true, 8, 150, 180)),
                        List.of(new Plant(
                                "apple",
                                90,
                                true,
                                new BloomDates.Dated(LocalDate.parse("2015-04-20"), LocalDate.parse("2015-05-08")))),
                        new CommunityBloom(
                                LocalDate.parse("2015-03-30"),
                                LocalDate.parse("2015-04-28"),
                                LocalDate.parse("2015-06-30"),
                                0.6),
                        Goal.BOTH,
                        LocalDate.parse("2015-03-10")));
    }

    /** Sums made with awk over the file itself, apart from this reader. */
    @Test
    void itsWeatherAddsUp() {
        WeatherRecord weather =
                SeasonFile.read(DEMO, DayOfPlan.of(LocalDate.EPOCH)).inputs().weather();

        assertThat(weather.days()).hasSize(1461);
        assertThat(weather.first()).isEqualTo("2012-01-01");
        assertThat(weather.last()).isEqualTo("2015-12-31");
        assertThat(weather.gaps()).isEmpty();
        assertThat(sum(weather, DailyWeather::minC)).isEqualTo(13134.2, within(1e-6));
        assertThat(sum(weather, DailyWeather::maxC)).isEqualTo(24981.9, within(1e-6));
        assertThat(sum(weather, DailyWeather::rainMm)).isEqualTo(4178.6, within(1e-6));
        assertThat(sum(weather, DailyWeather::windMs)).isEqualTo(7248.2, within(1e-6));
    }

    /** The table the demo was made from, npm vega-datasets 3.2.1, where the shared data are at hand. */
    @Test
    void itsWeatherIsThatOfTheOpenTable() throws IOException {
        Path table = shared().resolve("data/weather/vega/weather.csv");
        assumeTrue(Files.exists(table), "the shared data are not here");
        List<String> expected = new ArrayList<>();
        try (Stream<String> lines = Files.lines(table)) {
            lines.filter(line -> line.startsWith("New York,")).forEach(line -> {
                List<String> cells = List.of(line.split(",", -1));
                expected.add(String.join(",", cells.get(1), cells.get(4), cells.get(3), cells.get(2), cells.get(5)));
            });
        }

        List<String> shipped = new String(DEMO.beside("tansy-lane-weather.csv").bytes(), StandardCharsets.UTF_8)
                .lines()
                .skip(1)
                .toList();

        assertThat(expected).hasSize(1461);
        assertThat(shipped).containsExactlyElementsOf(expected);
    }

    private static Path shared() {
        String place = System.getenv("NESTYEAR_SHARED");
        return place == null ? Path.of("../../shared") : Path.of(place);
    }

    private static double sum(WeatherRecord weather, ToDoubleFunction<DailyWeather> value) {
        return weather.days().stream().mapToDouble(value).sum();
    }
}
