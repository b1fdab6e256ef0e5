package org.nestyear.data;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.MonthDay;
import java.time.ZoneId;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.nestyear.core.place.HorizonPoint;
import org.nestyear.core.place.Region;
import org.nestyear.core.place.Site;
import org.nestyear.core.season.Batch;
import org.nestyear.core.season.BloomDates;
import org.nestyear.core.season.CommunityBloom;
import org.nestyear.core.season.Goal;
import org.nestyear.core.season.NestKind;
import org.nestyear.core.season.Nests;
import org.nestyear.core.season.Plant;
import org.nestyear.core.season.PlantStand;
import org.nestyear.core.season.SeasonInputs;
import org.nestyear.core.season.Wintered;
import org.nestyear.core.weather.WeatherRecord;

class SeasonFileTest {
    private static final LocalDate TODAY = LocalDate.parse("2015-03-10");
    private static final DayOfPlan DAY = DayOfPlan.of(TODAY);

    @Test
    void theWholeFileIsRead() {
        Season season =
                SeasonFile.read(Fixtures.source("season/low-meadow.toml"), DayOfPlan.of(LocalDate.parse("2020-01-01")));

        SeasonInputs inputs = season.inputs();
        assertThat(inputs.site())
                .isEqualTo(new Site(
                        "Low Meadow",
                        40.78,
                        -73.97,
                        40,
                        ZoneId.of("America/New_York"),
                        135.0,
                        List.of(new HorizonPoint(60, 12), new HorizonPoint(120, 5), new HorizonPoint(200, 20)),
                        null,
                        Region.EASTERN_NORTH_AMERICA));
        assertThat(inputs.batches())
                .containsExactly(new Batch("Osmia lignaria", "local", 120, 210, Wintered.FRIDGE, 150.0, 3.0));
        assertThat(inputs.nests()).containsExactly(new Nests(NestKind.TUBE, true, 8, 150, 180));
        assertThat(inputs.plants())
                .containsExactly(
                        new Plant(
                                "apple",
                                90,
                                true,
                                new BloomDates.Dated(LocalDate.parse("2015-04-20"), LocalDate.parse("2015-05-08")),
                                List.of(LocalDate.parse("2014-05-01"))),
                        new Plant("willow", 0, false, new BloomDates.ThermalTime(MonthDay.of(2, 1), 0, 280.5, 14)),
                        new Plant(
                                "plum",
                                0,
                                false,
                                new BloomDates.FromPastDates(12),
                                List.of(
                                        LocalDate.parse("2012-04-02"),
                                        LocalDate.parse("2013-04-11"),
                                        LocalDate.parse("2014-04-09"))),
                        // Mid spring in the east: 12 April to 15 May at 41° north and sea level, a day earlier by
                        // latitude.
                        new Plant(
                                "the hedge",
                                30,
                                false,
                                new BloomDates.Dated(LocalDate.parse("2015-04-12"), LocalDate.parse("2015-05-15")),
                                List.of(),
                                new PlantStand("hawthorn", 180.0, 4000.0, true)));
        assertThat(inputs.community())
                .isEqualTo(new CommunityBloom(
                        LocalDate.parse("2015-03-30"),
                        LocalDate.parse("2015-04-28"),
                        LocalDate.parse("2015-06-30"),
                        0.6));
        assertThat(inputs.goal()).isEqualTo(Goal.BOTH);
        assertThat(inputs.today()).isEqualTo(TODAY);
        assertThat(season.todayGiven()).isTrue();
        assertThat(season.speciesAt()).containsExactly(new Position(season.file(), 18, 11));
    }

    @Test
    void theDayAskedForCountsBeforeTheDayInTheFile() {
        DayOfPlan asked = new DayOfPlan(LocalDate.parse("2015-03-01"), LocalDate.parse("2020-01-01"));

        Season season = SeasonFile.read(Fixtures.source("season/low-meadow.toml"), asked);

        assertThat(season.inputs().today()).isEqualTo("2015-03-01");
    }

    @Test
    void weatherFilesAreJoinedInOrderOfDate() {
        SeasonInputs inputs =
                SeasonFile.read(Fixtures.source("season/low-meadow.toml"), DAY).inputs();

        assertThat(inputs.weather().first()).isEqualTo("2015-02-01");
        assertThat(inputs.weather().last()).isEqualTo("2015-03-09");
        assertThat(inputs.weather().gaps()).isEmpty();
    }

    @Test
    void theForecastBeginsAfterToday() {
        SeasonInputs inputs =
                SeasonFile.read(Fixtures.source("season/low-meadow.toml"), DAY).inputs();

        WeatherRecord forecast = Objects.requireNonNull(inputs.forecast());
        assertThat(forecast.first()).isEqualTo("2015-03-11");
        assertThat(forecast.last()).isEqualTo("2015-03-14");
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/bad-season/expected.csv", numLinesToSkip = 1)
    void aFaultIsNamedWithItsPlace(String name, String code, String file, int line, int column) {
        TextSource source = Fixtures.source("bad-season/" + name);
        String expectedFile = source.beside(file).name();

        assertThatThrownBy(() -> SeasonFile.read(source, DAY)).isInstanceOfSatisfying(DataFault.class, fault -> {
            assertThat(fault.code().code()).isEqualTo(code);
            assertThat(fault.at()).isEqualTo(new Position(expectedFile, line, column));
            assertThat(fault.sentence()).contains("; expected ").endsWith(".");
        });
    }

    @Test
    void noBadSeasonIsLeftOut() throws IOException {
        List<String> expected = Files.readAllLines(Fixtures.path("bad-season/expected.csv")).stream()
                .skip(1)
                .map(line -> line.substring(0, line.indexOf(',')))
                .toList();
        try (Stream<Path> files = Files.list(Fixtures.path("bad-season"))) {
            List<String> there = files.map(path -> path.getFileName().toString())
                    .filter(name -> name.endsWith(".toml") && !name.equals("unknown-species.toml"))
                    .sorted()
                    .toList();
            assertThat(expected).containsExactlyElementsOf(there);
        }
    }

    @Test
    void aMisspeltKeyNamesTheNearest() {
        TextSource source = Fixtures.source("bad-season/unknown-key.toml");

        assertThatThrownBy(() -> SeasonFile.read(source, DAY))
                .hasMessage(
                        source.name()
                                + ":5:1: \"lattitude\" is not a key of [site]; expected one of name, latitude, longitude,"
                                + " elevation_m, zone, faces_deg, horizon, region, roof_out_cm, roof_above_cm.\nMaybe \"latitude\" was meant.");
    }

    @Test
    void aKeyOfAnotherTableIsSentThere() {
        assertThat(advice("key-of-another-table.toml")).isEqualTo("Maybe it belongs under [aim].");
        assertThat(advice("today-at-the-top.toml")).isEqualTo("Maybe it belongs under [aim].");
    }

    @Test
    void theLikelyCauseIsNamed() {
        assertThat(advice("chill-fahrenheit.toml")).isEqualTo("Maybe this is Fahrenheit: write 3.3.");
        assertThat(advice("hole-width-inches.toml")).isEqualTo("Maybe this is inches: write 7.9.");
        assertThat(advice("wintered-without-quotes.toml")).isEqualTo("Maybe words need quotation marks: \"fridge\".");
        assertThat(advice("latitude-decimal-comma.toml"))
                .isEqualTo("Maybe write the number with a point, not a comma.");
        assertThat(advice("bloom-day-first.toml")).isEqualTo("Maybe write the date year first, such as 2015-04-20.");
    }

    @Test
    void anUnknownSpeciesPointsToItsLine() {
        Season season = SeasonFile.read(Fixtures.source("bad-season/unknown-species.toml"), DAY);

        DataFault fault = season.unknownSpecies(0, List.of("Osmia cornuta", "Osmia lignaria"));

        assertThat(fault.at()).isEqualTo(new Position(season.file(), 17, 11));
        assertThat(fault.advice()).isEqualTo("Maybe \"Osmia lignaria\" was meant.");
    }

    @Test
    void everyFaultIsListed() {
        assertThat(SeasonFile.check(Fixtures.source("bad-season/unknown-key.toml"), DAY)
                        .faults())
                .extracting(DataFault::code)
                .containsExactly(FaultCode.SEASON_KEY, FaultCode.SEASON_MISSING);
    }

    private static String advice(String name) {
        SeasonCheck check = SeasonFile.check(Fixtures.source("bad-season/" + name), DAY);
        assertThat(check.faults()).isNotEmpty();
        return check.faults().get(0).advice();
    }
}
