package org.nestyear.checks.files;

import static org.assertj.core.api.Assertions.assertThat;

import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.nestyear.checks.Comparison;
import org.nestyear.checks.SharedData;
import org.nestyear.core.weather.DailyWeather;
import org.nestyear.core.weather.WeatherRecord;
import org.nestyear.data.GhcnDaily;
import org.nestyear.data.GhcnReading;
import org.nestyear.data.TextSource;
import org.nestyear.data.WeatherFile;
import org.nestyear.data.WeatherFiles;

/** Real excerpts of NOAA GHCN-Daily (weather/formats, public domain). */
class GhcnFilesTest {
    private static final String FORMATS = "weather/formats/";

    /** The README of that folder: the highest of 1869-06-22 and 1869-07-14 carry quality mark I. */
    @Test
    void fixedWidthOfCentralPark() {
        GhcnReading reading = read(FORMATS + "ghcnd_USW00094728_excerpt.dly");
        WeatherRecord record = reading.file().record();
        System.out.println("Central Park: " + record.days().size() + " days, notes "
                + reading.file().notes());
        assertThat(reading.report().station()).isEqualTo("USW00094728");
        assertThat(record.first()).isEqualTo(LocalDate.of(1869, 6, 1));
        assertThat(record.last()).isEqualTo(LocalDate.of(2015, 12, 31));
        // 61 days of 1869 and four whole years, one of them a leap year.
        assertThat(record.days()).hasSize(61 + 1461);
        assertThat(record.find(LocalDate.of(1869, 6, 22)).orElseThrow().maxC()).isNaN();
        assertThat(record.find(LocalDate.of(1869, 7, 14)).orElseThrow().maxC()).isNaN();
        // The first line of the file, read by eye: 26.1 °C on the first day; lines 1 and 2 for the second.
        assertThat(record.find(LocalDate.of(1869, 6, 1)).orElseThrow().maxC()).isEqualTo(26.1);
        assertThat(record.find(LocalDate.of(1869, 6, 2)).orElseThrow().minC()).isEqualTo(17.8);
        assertThat(reading.report().droppedByFlag().get("I")).isGreaterThanOrEqualTo(2);
        assertThat(reading.report().traces()).isPositive();
        assertThat(reading.report().otherElements())
                .contains("SNOW", "SNWD", "WT01")
                .doesNotContain("TMAX");
        assertThat(record.find(LocalDate.of(1869, 7, 31))).isPresent();
        assertThat(record.find(LocalDate.of(1869, 8, 1))).isEmpty();
    }

    /** The same values of 1869 and 2014 in the layout of one value a line. */
    @Test
    void oneValueALineGivesTheSameDays() {
        WeatherRecord fixed =
                read(FORMATS + "ghcnd_USW00094728_excerpt.dly").file().record();
        GhcnReading reading = read(FORMATS + "ghcnd_by_year_layout_USW00094728.csv");
        Comparison values = new Comparison("one value a line against fixed width", 0);
        int missing = 0;
        for (DailyWeather day : reading.file().record().days()) {
            DailyWeather other = fixed.find(day.date()).orElseThrow();
            missing += compare(values, day.date() + " lowest", day.minC(), other.minC());
            missing += compare(values, day.date() + " highest", day.maxC(), other.maxC());
            missing += compare(values, day.date() + " rain", day.rainMm(), other.rainMm());
            missing += compare(values, day.date() + " wind", day.windMs(), other.windMs());
        }
        // 426 days of three or four values; no wind was measured in 1869, and two highest are left out.
        assertThat(reading.file().record().days()).hasSize(61 + 365);
        values.check(3 * 426);
        assertThat(missing).isGreaterThanOrEqualTo(61 + 2);
        assertThat(reading.report().readInTheMorning()).isFalse();
    }

    /** Kyoto 1987–1991: the lowest temperature is empty from 1990 on, and must not become zero. */
    @Test
    void oneDayALineOfKyoto() {
        GhcnReading reading = read(FORMATS + "ghcnd_access_csv_JA000047759_1987-1991.csv");
        WeatherRecord record = reading.file().record();
        DailyWeather first = record.find(LocalDate.of(1987, 1, 1)).orElseThrow();
        assertThat(first.maxC()).isEqualTo(11.8);
        assertThat(first.minC()).isEqualTo(4.2);
        assertThat(first.rainMm()).as("a trace").isEqualTo(0);
        assertThat(record.days().stream().filter(day -> day.date().getYear() < 1990 && day.hasTemperatures()))
                .hasSize(3 * 365 + 1);
        assertThat(record.days().stream().filter(day -> day.date().getYear() >= 1990 && !day.hasTemperatures()))
                .hasSizeGreaterThan(100);
        System.out.println("Kyoto: " + record.days().size() + " days, notes "
                + reading.file().notes());
    }

    /**
     * weather/washington-dc was taken from the same service as tenths with its quality marks: written out as a .dly file
     * and read back, every value must be the same number, and marked ones left out.
     */
    @Test
    void washingtonTenthsSurviveTheFixedWidthLayout(@TempDir Path folder) throws IOException {
        Map<LocalDate, NamedCsvRecord> rows = new TreeMap<>();
        for (NamedCsvRecord row : SharedData.rows("weather/washington-dc/daily_ghcnd_USW00013743_1970-2012.csv")) {
            rows.put(LocalDate.parse(row.getField("date")), row);
        }
        StringBuilder text = new StringBuilder();
        for (LocalDate month = LocalDate.of(1970, 1, 1); month.getYear() < 2013; month = month.plusMonths(1)) {
            text.append(line(month, "TMAX", "tmax", rows)).append(line(month, "TMIN", "tmin", rows));
        }
        Path file = folder.resolve("washington.dly");
        Files.writeString(file, text);
        WeatherFile read = WeatherFiles.read(TextSource.ofFile(file));
        Comparison values = new Comparison("Washington tenths, °C", 0);
        for (NamedCsvRecord row : rows.values()) {
            DailyWeather day =
                    read.record().find(LocalDate.parse(row.getField("date"))).orElseThrow();
            check(values, row, "tmin", day.minC());
            check(values, row, "tmax", day.maxC());
        }
        values.check(2 * 15_600);
    }

    private static void check(Comparison values, NamedCsvRecord row, String name, double read) {
        String tenths = row.getField(name + "_tenths_c");
        if (tenths.isEmpty() || !row.getField(name + "_qflag").isEmpty()) {
            assertThat(read).as(row.getField("date")).isNaN();
        } else {
            values.add(row.getField("date") + " " + name, read, Integer.parseInt(tenths) / 10.0);
        }
    }

    private static String line(LocalDate month, String element, String name, Map<LocalDate, NamedCsvRecord> rows) {
        StringBuilder line = new StringBuilder(
                String.format(Locale.ROOT, "USW00013743%04d%02d%s", month.getYear(), month.getMonthValue(), element));
        for (int day = 0; day < 31; day++) {
            NamedCsvRecord row = day < month.lengthOfMonth() ? rows.get(month.plusDays(day)) : null;
            String tenths = row == null ? "" : row.getField(name + "_tenths_c");
            String flag = row == null ? "" : row.getField(name + "_qflag");
            line.append(String.format(
                    Locale.ROOT, "%5s %1sX", tenths.isEmpty() ? "-9999" : tenths, flag.isEmpty() ? " " : flag));
        }
        return line.append('\n').toString();
    }

    private static int compare(Comparison values, String name, double one, double other) {
        if (Double.isNaN(one) || Double.isNaN(other)) {
            assertThat(Double.isNaN(one)).as(name).isEqualTo(Double.isNaN(other));
            return 1;
        }
        values.add(name, one, other);
        return 0;
    }

    private static GhcnReading read(String path) {
        try {
            return GhcnDaily.read(TextSource.ofFile(SharedData.file(path).toRealPath()));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
