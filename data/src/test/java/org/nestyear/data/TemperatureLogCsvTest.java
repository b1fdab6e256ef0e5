package org.nestyear.data;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.nestyear.core.weather.LogGap;
import org.nestyear.core.weather.LoggedTemperature;
import org.nestyear.core.weather.LoggedTemperatures;

class TemperatureLogCsvTest {
    private static TextSource text(String text) {
        return TextSource.ofTexts("log.csv", Map.of("log.csv", text));
    }

    private static LocalDateTime time(String text) {
        return LocalDateTime.parse(text);
    }

    @Test
    void readingsKeepTheirTimes() {
        LoggedTemperatures log =
                TemperatureLogCsv.read(text("time,temp_c\n2024-03-09 22:00,2.7\n2024-03-09T23:00:30,-0.25\n"));

        assertThat(log.readings())
                .containsExactly(
                        new LoggedTemperature(time("2024-03-09T22:00"), 2.7),
                        new LoggedTemperature(time("2024-03-09T23:00:30"), -0.25));
    }

    /** 85 °F is 29.44 °C, the warmth of an incubator, and no sign of a failing probe. */
    @Test
    void fahrenheitIsConverted() {
        LoggedTemperatures log =
                TemperatureLogCsv.read(text("note;temp_f;time\na;85,0;2024-06-01 10:00\nb;86,0;2024-06-01 11:00\n"));

        assertThat(log.readings().get(0).celsius()).isEqualTo(29.4444, within(1e-4));
        assertThat(log.readings().get(1).celsius()).isEqualTo(30, within(1e-9));
    }

    /** Clocks go forward at two in the morning; with offsets the hour between is an hour. */
    @Test
    void offsetsAreToldByTheFirst() {
        LoggedTemperatures log = TemperatureLogCsv.read(
                text("time,temp_c\n2024-03-10T01:00-08:00,3\n2024-03-10T03:00-07:00,3\n2024-03-10T11:00Z,3\n"));

        assertThat(log.readings())
                .extracting(LoggedTemperature::time)
                .containsExactly(time("2024-03-10T01:00"), time("2024-03-10T02:00"), time("2024-03-10T03:00"));
    }

    @Test
    void emptyCellsLeaveAGap() {
        LoggedTemperatures log = TemperatureLogCsv.read(text("""
                time,temp_c
                2024-03-09 22:00,3
                2024-03-09 23:00,3
                2024-03-10 00:00,
                2024-03-10 01:00,NA
                2024-03-10 02:00,-
                2024-03-10 03:00,3
                """));

        assertThat(log.gaps()).containsExactly(new LogGap(time("2024-03-09T23:00"), time("2024-03-10T03:00")));
        assertThat(log.hourlyC()).hasSize(5);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            time,temp_c                               | NY-FILE-EMPTY  | 1 | 1  | the log holds no reading; expected a header line such as time,temp_c and at least two readings.
            time,temp_c#2024-03-09 22:00,3            | NY-FILE-EMPTY  | 1 | 1  | the log holds a single reading; expected a header line such as time,temp_c and at least two readings.
            when,temp_c#x,3                           | NY-LOG-COLUMN  | 1 | 1  | the log has the columns when, temp_c; expected the columns time and temp_c (or temp_f).
            2024-03-09 22:00,3#2024-03-09 23:00,3     | NY-LOG-COLUMN  | 1 | 1  | the log has the columns 2024-03-09 22:00, 3; expected the columns time and temp_c (or temp_f).
            time,temp_c,temp_f                        | NY-LOG-COLUMN  | 1 | 13 | a second column is named "temp_f"; expected one column of times and one of temperatures.
            time,temp_c#09.03.2024 22:00,3            | NY-LOG-TIME    | 2 | 1  | "09.03.2024 22:00" is not a time of a day; expected a time such as 2024-03-09 22:00, year first.
            time,temp_c#2024-02-30 22:00,3            | NY-LOG-TIME    | 2 | 1  | "2024-02-30 22:00" is not a time of a day; expected a time such as 2024-03-09 22:00, year first.
            time,temp_c#2024-03-09 22:00,3#2024-03-09 23:00Z,3 | NY-LOG-TIME | 3 | 1 | "2024-03-09 23:00Z" has an offset from UTC, and the times above it have none; expected an offset in every time, or in none.
            time,temp_c#2024-03-09 22:00Z,3#2024-03-09 23:00,3 | NY-LOG-TIME | 3 | 1 | "2024-03-09 23:00" has no offset from UTC, and the times above it have one; expected an offset in every time, or in none.
            temp_c,time#3,2024-03-09 22:00#3,2024-03-09 22:00 | NY-LOG-TWICE | 3 | 3 | 2024-03-09T22:00 stands there twice; expected each time once.
            temp_c,time#3,2024-03-09 22:00#3,2024-03-09 21:00 | NY-LOG-ORDER | 3 | 3 | 2024-03-09T21:00 comes after 2024-03-09T22:00; expected readings in order of time.
            time,temp_c#2024-03-09 22:00,mild         | NY-LOG-NUMBER  | 2 | 18 | the temperature is "mild", which is not a number; expected a number in °C, or an empty cell when it was not measured.
            time,temp_c#2024-03-09 22:00,-127         | NY-LOG-SENSOR  | 2 | 18 | the temperature is -127 °C, which a probe shows when it is not connected; expected a temperature that was measured, or an empty cell.
            time,temp_c#2024-03-09 22:00,85.0         | NY-LOG-SENSOR  | 2 | 18 | the temperature is 85.0 °C, which a probe shows before its first reading; expected a temperature that was measured, or an empty cell.
            time,temp_f#2024-03-09 22:00,185          | NY-LOG-SENSOR  | 2 | 18 | the temperature is 185 °F, which a probe shows before its first reading; expected a temperature that was measured, or an empty cell.
            time,temp_c#2024-03-09 22:00,84.2         | NY-LOG-RANGE   | 2 | 18 | the temperature is 84.2 °C; expected -40 to 60 °C.
            time,temp_c#2024-03-09 22:00,"3           | NY-LOG-SYNTAX  | 2 | 1  | a quotation mark is opened and not closed again; expected cells in pairs of quotation marks, or without any.
            """, quoteCharacter = '$')
    void aFaultIsNamedWithItsPlace(String rows, String code, int line, int column, String sentence) {
        assertThatThrownBy(() -> TemperatureLogCsv.read(text(rows.replace('#', '\n') + "\n")))
                .isInstanceOfSatisfying(DataFault.class, fault -> {
                    assertThat(fault.code().code()).isEqualTo(code);
                    assertThat(fault.at()).isEqualTo(new Position("log.csv", line, column));
                    assertThat(fault.sentence()).isEqualTo(sentence);
                });
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            time,temp_c#2024-03-09 22:00,84.2     | Maybe the log is in Fahrenheit: name the column temp_f.
            time,temp_c#2024-03-09 22:00,85       | Maybe clear the cell; or the log is in Fahrenheit: name the column temp_f.
            time,temp_c#2024-03-09 22:00,-127     | Maybe clear the cell.
            time,temp_c#2024-03-09 22:00,-60      | Maybe the probe failed: clear the cell.
            time,temp_c#9/3/2024 22:00,3          | Maybe day and month stand first here: write year, month, day.
            2024-03-09 22:00,3                    | Maybe the header line is missing: the first line begins with a time.
            """)
    void theLikelyCauseIsNamed(String rows, String advice) {
        assertThatThrownBy(() -> TemperatureLogCsv.read(text(rows.replace('#', '\n') + "\n")))
                .isInstanceOfSatisfying(
                        DataFault.class, fault -> assertThat(fault.advice()).isEqualTo(advice));
    }

    @Test
    void aMissingFileIsNamed() {
        assertThatThrownBy(() -> TemperatureLogCsv.read(TextSource.ofFile(Path.of("no-such.csv"))))
                .isInstanceOfSatisfying(
                        DataFault.class, fault -> assertThat(fault.code()).isEqualTo(FaultCode.FILE_MISSING));
    }
}
