package org.nestyear.data;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.StringWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.nestyear.core.weather.DailyWeather;
import org.nestyear.core.weather.Gap;
import org.nestyear.core.weather.WeatherRecord;

class WeatherCsvTest {
    @ParameterizedTest
    @CsvSource({
        "empty.csv,                  NY-FILE-EMPTY,         1, 1",
        "header-only.csv,            NY-FILE-EMPTY,         1, 1",
        "latin-1.csv,                NY-FILE-NOT-TEXT,      0, 0",
        "header-missing.csv,         NY-WEATHER-COLUMN,     1, 1",
        "column-missing.csv,         NY-WEATHER-COLUMN,     1, 1",
        "column-misspelt.csv,        NY-WEATHER-COLUMN,     1, 1",
        "column-twice.csv,           NY-WEATHER-COLUMN,     1, 20",
        "date-day-first.csv,         NY-WEATHER-DATE,       3, 1",
        "date-impossible.csv,        NY-WEATHER-DATE,       2, 1",
        "date-twice.csv,             NY-WEATHER-TWICE,      4, 1",
        "dates-out-of-order.csv,     NY-WEATHER-ORDER,      4, 1",
        "not-a-number.csv,           NY-WEATHER-NUMBER,     2, 14",
        "min-above-max.csv,          NY-WEATHER-MIN-MAX,    2, 12",
        "one-day-fahrenheit.csv,     NY-WEATHER-RANGE,      2, 15",
        "tenths-of-a-degree.csv,     NY-WEATHER-RANGE,      2, 15",
        "rain-negative.csv,          NY-WEATHER-RANGE,      2, 16",
        "wind-too-strong.csv,        NY-WEATHER-RANGE,      2, 18",
        "fahrenheit.csv,             NY-WEATHER-FAHRENHEIT, 1, 11",
        "fahrenheit-cold-inland.csv, NY-WEATHER-FAHRENHEIT, 1, 11",
        "two-places.csv,             NY-WEATHER-PLACES,     3, 1",
        "row-short.csv,              NY-WEATHER-CELLS,      2, 1",
        "decimal-comma.csv,          NY-WEATHER-CELLS,      2, 18",
        "quote-open.csv,             NY-WEATHER-SYNTAX,     2, 1",
    })
    void aFaultIsNamedWithItsPlace(String name, String code, int line, int column) {
        TextSource source = Fixtures.source("bad-weather/" + name);

        assertThatThrownBy(() -> WeatherCsv.read(source)).isInstanceOfSatisfying(DataFault.class, fault -> {
            assertThat(fault.code().code()).isEqualTo(code);
            assertThat(fault.at()).isEqualTo(new Position(source.name(), line, column));
            assertThat(fault).hasMessageStartingWith(fault.at() + ": ").hasMessageContaining("; expected ");
        });
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            column-misspelt.csv | Maybe "tmni_c" was meant to be tmin_c.
            header-missing.csv | Maybe the header line is missing: the first line begins with a day.
            date-day-first.csv | Maybe day and month stand first here: write year, month, day.
            min-above-max.csv | Maybe the two columns are swapped.
            one-day-fahrenheit.csv | Maybe this is Fahrenheit (25.6 °C): name the columns tmin_f and tmax_f.
            tenths-of-a-degree.csv | Maybe these are tenths of a degree.
            fahrenheit.csv | Maybe the table is in Fahrenheit: name the columns tmin_f and tmax_f.
            """)
    void theLikelyCauseIsNamed(String name, String advice) {
        TextSource source = Fixtures.source("bad-weather/" + name);

        assertThatThrownBy(() -> WeatherCsv.read(source))
                .isInstanceOfSatisfying(
                        DataFault.class, fault -> assertThat(fault.advice()).isEqualTo(advice));
    }

    @Test
    void theWholeMessageIsOneSentenceAndAnAdviceLine() {
        TextSource source = Fixtures.source("bad-weather/dates-out-of-order.csv");

        assertThatThrownBy(() -> WeatherCsv.read(source))
                .hasMessage(source.name()
                        + ":4:1: 2015-03-02 comes after 2015-03-04; expected days in order of date.\n"
                        + "Maybe sort the rows by date, or join two files that overlap.");
    }

    @Test
    void aMissingFileIsNamed() {
        assertThatThrownBy(() -> WeatherCsv.read(TextSource.ofFile(Path.of("no-such.csv"))))
                .isInstanceOfSatisfying(DataFault.class, fault -> {
                    assertThat(fault.code()).isEqualTo(FaultCode.FILE_MISSING);
                    assertThat(fault.at()).isEqualTo(new Position("no-such.csv", 0, 0));
                });
    }

    @Test
    void gapsAreKeptAsGaps() {
        WeatherFile file = WeatherCsv.read(Fixtures.source("weather/gap.csv"));

        assertThat(file.record().gaps())
                .containsExactly(
                        gap("2015-03-03", "2015-03-05"),
                        gap("2015-03-07", "2015-03-08"),
                        gap("2015-03-10", "2015-03-10"));
        assertThat(file.record()
                        .find(LocalDate.parse("2015-03-09"))
                        .orElseThrow()
                        .rainMm())
                .isZero();
        assertThat(file.record()
                        .find(LocalDate.parse("2015-03-10"))
                        .orElseThrow()
                        .rainMm())
                .isNaN();
        assertThat(file.position(LocalDate.parse("2015-03-06")).line()).isEqualTo(5);
    }

    @Test
    void unitsInTheHeadingsAreConverted() {
        WeatherFile file = WeatherCsv.read(Fixtures.source("weather/fahrenheit-semicolon.csv"));

        DailyWeather first = file.record().find(LocalDate.parse("2015-03-01")).orElseThrow();
        assertThat(first.minC()).isEqualTo(0, within(1e-12));
        assertThat(first.maxC()).isEqualTo(10, within(1e-12));
        assertThat(first.rainMm()).isEqualTo(2.54, within(1e-12));
        assertThat(first.windMs()).isEqualTo(4.4704, within(1e-12));
        assertThat(file.record().days()).hasSize(2);
        assertThat(file.columns())
                .containsExactly("date", "tmin_c (°F)", "tmax_c (°F)", "rain_mm (in)", "wind_m_s (mph)");
        assertThat(file.ignored()).containsExactly("Note");
    }

    @Test
    void everyFaultOfATableIsListed() {
        WeatherCheck check = WeatherCsv.check(Fixtures.source("bad-weather/tenths-of-a-degree.csv"));

        assertThat(check.faults()).extracting(fault -> fault.at().line()).containsExactly(2, 3);
        assertThat(check.faults().get(1).advice()).isEqualTo("Maybe these are tenths of a degree.");
        assertThat(check.moreFaults()).isZero();
    }

    @Test
    void whatIsWrittenReadsBackTheSame() {
        WeatherRecord record = new WeatherRecord(List.of(
                new DailyWeather(LocalDate.parse("2024-02-29"), -0.1, 1e-4, 0, Double.NaN, 12.25),
                new DailyWeather(LocalDate.parse("2024-03-02"), Double.NaN, 7.000000001, Double.NaN, Double.NaN, 0)));
        StringWriter text = new StringWriter();

        WeatherCsvWriter.write(record, text);

        assertThat(text).hasToString("""
                date,tmin_c,tmax_c,rain_mm,radiation_mj_m2
                2024-02-29,-0.1,0.00010,0.0,12.25
                2024-03-02,,7.000000001,,0.0
                """);
        WeatherFile back = WeatherCsv.read(TextSource.ofTexts("back.csv", Map.of("back.csv", text.toString())));
        assertThat(back.record().days()).containsExactlyElementsOf(record.days());
    }

    private static Gap gap(String from, String to) {
        return new Gap(LocalDate.parse(from), LocalDate.parse(to));
    }
}
