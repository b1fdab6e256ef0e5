package org.nestyear.data;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.nestyear.core.weather.DailyWeather;

/** Invented values in the layouts of the service's documentation; real files are read in the checks module. */
class GhcnDailyTest {
    private static final String STATION = "XX000000001";
    private static final LocalDate DAY = LocalDate.of(2015, 2, 3);

    @Test
    void tenthsAreKeptAndWhatIsMissingStaysMissing() {
        GhcnReading reading = read(
                "a.dly",
                month("201502", "TMAX", Map.of(3, "   78  X", 4, "  117  X")),
                month("201502", "TMIN", Map.of(3, "   -1  X")),
                month("201502", "PRCP", Map.of(3, "    0T X", 4, "  123  X")),
                month("201502", "SNWD", Map.of()));

        DailyWeather day = reading.file().record().find(DAY).orElseThrow();
        assertThat(day.maxC()).isEqualTo(7.8);
        assertThat(day.minC()).isEqualTo(-0.1);
        assertThat(day.rainMm()).isEqualTo(0);
        assertThat(day.windMs()).isNaN();
        DailyWeather next = reading.file().record().find(DAY.plusDays(1)).orElseThrow();
        assertThat(next.minC()).isNaN();
        assertThat(next.rainMm()).isEqualTo(12.3);
        assertThat(reading.file().record().days()).hasSize(2);
        assertThat(reading.file().position(DAY)).isEqualTo(new Position("a.dly", 1, 1));
        assertThat(reading.report().station()).isEqualTo(STATION);
        assertThat(reading.report().traces()).isEqualTo(1);
        assertThat(reading.report().otherElements()).containsExactly("SNWD");
        assertThat(reading.file().notes()).containsExactly("1 day with a trace of rain taken as 0 mm.");
    }

    @Test
    void aValueThatFailedACheckIsLeftOutAndCounted() {
        GhcnReading reading = read(
                "a.dly",
                month("201502", "TMAX", Map.of(3, "  678 IX", 4, "   50  X")),
                month("201502", "TMIN", Map.of(3, "   10  X", 4, "   60  X")));

        assertThat(reading.file().record().find(DAY).orElseThrow().maxC()).isNaN();
        assertThat(reading.file().record().find(DAY).orElseThrow().minC()).isEqualTo(1);
        assertThat(reading.report().droppedByFlag()).containsExactly(Map.entry("I", 1));
        assertThat(reading.report().crossed()).isEqualTo(1);
        assertThat(reading.file().record().find(DAY.plusDays(1)).orElseThrow().hasTemperatures())
                .isFalse();
        assertThat(reading.file().notes())
                .containsExactly(
                        "1 value left out that failed a check of the service: 1 marked I (internal inconsistency).",
                        "1 day left out where the lowest temperature is above the highest.");
    }

    @Test
    void blanksCutAtTheEndOfALineDoNoHarm() {
        String line = month("201503", "TMAX", Map.of(31, "  101   ")).stripTrailing();
        assertThat(line).hasSize(266);
        GhcnReading reading = read("a.dly", line, month("201503", "TMIN", Map.of(31, "   10  X")));
        assertThat(reading.file().record().last()).isEqualTo(LocalDate.of(2015, 3, 31));
        assertThat(reading.file()
                        .record()
                        .find(LocalDate.of(2015, 3, 31))
                        .orElseThrow()
                        .maxC())
                .isEqualTo(10.1);
    }

    @Test
    void faultsNameLineAndColumn() {
        String good = month("201502", "TMIN", Map.of(3, "   10  X"));
        fault("a.dly", FaultCode.WEATHER_CELLS, 2, 1, good, good.substring(0, 200));
        fault("a.dly", FaultCode.WEATHER_DATE, 2, 12, good, month("201513", "TMAX", Map.of()));
        fault("a.dly", FaultCode.WEATHER_DATE, 2, 22 + 8 * 29, good, month("201502", "TMAX", Map.of(30, "   10  X")));
        fault("a.dly", FaultCode.WEATHER_NUMBER, 2, 22 + 8 * 4, good, month("201502", "TMAX", Map.of(5, "  1.2  X")));
        fault("a.dly", FaultCode.WEATHER_RANGE, 2, 22, good, month("201502", "TMAX", Map.of(1, " 9999  X")));
        fault("a.dly", FaultCode.WEATHER_TWICE, 2, 22 + 8 * 2, good, good);
        fault("a.dly", FaultCode.WEATHER_PLACES, 2, 1, good, good.replace(STATION, "XX000000002"));
        fault("a.dly", FaultCode.WEATHER_COLUMN, 1, 1, good);
        fault("b.csv", FaultCode.WEATHER_DATE, 1, 13, STATION + ",20150230,TMAX,10,,,X,");
        fault("b.csv", FaultCode.WEATHER_NUMBER, 1, 27, STATION + ",20150203,TMAX,1.0,,,X,");
        fault(
                "b.csv",
                FaultCode.WEATHER_CELLS,
                2,
                1,
                STATION + ",20150203,TMAX,10,,,X,",
                STATION + ",20150203,TMAX,10");
    }

    @Test
    void oneValueALineInAnyOrderWithTheHourOfReading() {
        GhcnReading reading = read(
                "2015.csv",
                "ID,DATE,ELEMENT,DATA_VALUE,M_FLAG,Q_FLAG,S_FLAG,OBS_TIME",
                STATION + ",20150204,TMAX,120,,,X,0700",
                STATION + ",20150204,TMIN,20,,,X,0700",
                STATION + ",20150203,TMIN,-15,,,X,0700",
                STATION + ",20150203,TMAX,78,,,X,0700",
                STATION + ",20150203,WT01,1,,,X,");
        assertThat(reading.file().record().first()).isEqualTo(DAY);
        assertThat(reading.file().record().find(DAY).orElseThrow().minC()).isEqualTo(-1.5);
        assertThat(reading.report().readInTheMorning()).isTrue();
        assertThat(reading.file().notes())
                .containsExactly("The thermometer was mostly read at 07:00, so the highest temperature of a row was"
                        + " reached on the day before; it was left where it stands.");
    }

    @Test
    void aReadingAtMidnightIsNoMorning() {
        GhcnReading reading =
                read("2015.csv", STATION + ",20150204,TMAX,120,,,X,2400", STATION + ",20150204,TMIN,20,,,X,2400");
        assertThat(reading.report().readInTheMorning()).isFalse();
        assertThat(reading.file().notes()).isEmpty();
    }

    @Test
    void oneDayALineIsReadWithItsAttributes() {
        String header =
                "\"STATION\",\"DATE\",\"NAME\",\"PRCP\",\"PRCP_ATTRIBUTES\",\"TMAX\",\"TMAX_ATTRIBUTES\",\"TMIN\",\"TMIN_ATTRIBUTES\"";
        String row = "\"" + STATION
                + "\",\"2015-02-03\",\"HERE, XX\",\"    3\",\"T,,X\",\"   78\",\",,X,0800\",\"  -15\",\",G,X\"";
        GhcnReading reading =
                read("c.csv", header, row, row.replace("-03", "-04").replace("\",G,X\"", "\",,X\""));
        DailyWeather day = reading.file().record().find(DAY).orElseThrow();
        assertThat(day.maxC()).isEqualTo(7.8);
        assertThat(day.minC()).isNaN();
        assertThat(day.rainMm()).isEqualTo(0);
        assertThat(reading.report().droppedByFlag()).containsExactly(Map.entry("G", 1));
        assertThat(reading.report().hoursOfReading()).containsExactly(Map.entry("0800", 2));
        fault("c.csv", FaultCode.WEATHER_NUMBER, 2, 54, header, row.replace("   78", "  7.8"));
    }

    @Test
    void aYearInWholeDegreesIsRefused() {
        StringBuilder table = new StringBuilder("STATION,DATE,TMAX,TMAX_ATTRIBUTES,TMIN,TMIN_ATTRIBUTES\n");
        for (int d = 0; d < 365; d++) {
            table.append(STATION)
                    .append(',')
                    .append(LocalDate.of(2015, 1, 1).plusDays(d))
                    .append(",95,\",,X\",50,\",,X\"\n");
        }
        assertThatThrownBy(() -> GhcnDaily.read(text("c.csv", table.toString())))
                .isInstanceOf(DataFault.class)
                .hasMessageContaining("would have 9.5 °C")
                .hasMessageContaining("Maybe the table was ordered in whole degrees");
    }

    @Test
    void otherTablesGoToTheirOwnReader() {
        TextSource own = text("d.csv", "date,tmin_c,tmax_c,rain_mm\n2015-02-03,1.2,3.4,0\n");
        assertThat(WeatherFiles.read(own).record().find(DAY).orElseThrow().minC())
                .isEqualTo(1.2);
        assertThatThrownBy(() -> GhcnDaily.read(own))
                .isInstanceOf(DataFault.class)
                .hasMessageContaining("does not begin like one of GHCN-Daily");
        TextSource station =
                text("2015.csv", STATION + ",20150203,TMAX,78,,,X,\n" + STATION + ",20150203,TMIN,7,,,X,\n");
        assertThat(WeatherFiles.read(station).record().find(DAY).orElseThrow().minC())
                .isEqualTo(0.7);
    }

    /** A season file may name a .dly file like any other weather file. */
    @Test
    void aSeasonReadsIt() throws IOException {
        StringBuilder weather = new StringBuilder();
        for (YearMonth month = YearMonth.of(2014, 11);
                month.isBefore(YearMonth.of(2015, 5));
                month = month.plusMonths(1)) {
            Map<Integer, String> highs = new TreeMap<>();
            Map<Integer, String> lows = new TreeMap<>();
            for (int day = 1; day <= month.lengthOfMonth(); day++) {
                highs.put(day, "  123  X");
                lows.put(day, "   -7  X");
            }
            String name = month.toString().replace("-", "");
            weather.append(month(name, "TMAX", highs)).append('\n');
            weather.append(month(name, "TMIN", lows)).append('\n');
        }
        String toml = Files.readString(Fixtures.path("season/low-meadow.toml"))
                .replace("[\"late.csv\", \"early.csv\"]", "[\"gauge.dly\"]")
                .replace("forecast = \"forecast.csv\"", "");
        Season season = SeasonFile.read(
                TextSource.ofTexts("season.toml", Map.of("season.toml", toml, "gauge.dly", weather.toString())),
                DayOfPlan.of(LocalDate.of(2015, 3, 20)));
        assertThat(season.inputs().weather().find(DAY).orElseThrow().minC()).isEqualTo(-0.7);
        assertThat(season.inputs().weather().gaps()).isEmpty();
    }

    @Test
    void allFaultsAreListed() {
        String bad = month("201502", "TMAX", Map.of(1, " 9999  X"));
        WeatherCheck check = WeatherFiles.check(text("a.dly", bad + "\n" + bad.replace("201502", "201503") + "\n"));
        assertThat(check.faults()).hasSize(2);
        assertThat(check.file()).isNull();
    }

    private static void fault(String name, FaultCode code, int line, int column, String... lines) {
        assertThatThrownBy(() -> read(name, lines)).isInstanceOfSatisfying(DataFault.class, fault -> {
            assertThat(fault.code()).as(fault.getMessage()).isEqualTo(code);
            assertThat(fault.at()).isEqualTo(new Position(name, line, column));
            assertThat(fault).hasMessageStartingWith(fault.at() + ": ").hasMessageContaining("; expected ");
        });
    }

    private static GhcnReading read(String name, String... lines) {
        return GhcnDaily.read(text(name, String.join("\n", lines) + "\n"));
    }

    private static TextSource text(String name, String text) {
        return TextSource.ofTexts(name, Map.of(name, text));
    }

    /** A line of a .dly file: value and three marks of some days, the rest missing. */
    private static String month(String yearMonth, String element, Map<Integer, String> values) {
        String[] days = new String[31];
        Arrays.fill(days, "-9999   ");
        new TreeMap<>(values).forEach((day, value) -> days[day - 1] = value);
        return STATION + yearMonth + element + String.join("", List.of(days));
    }
}
