package org.nestyear.checks;

import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.nestyear.core.weather.DailyWeather;
import org.nestyear.core.weather.WeatherRecord;

/** Daily weather of the reference data that several checks read. */
public final class ReferenceWeather {
    private static final int FIELD_HEADER_LINES = 6;
    private static final double TENTHS = 10;

    private ReferenceWeather() {}

    /** Washington National, 38.85° N 77.03° W, 1970 to 2012, no rain measured (NOAA GHCN-Daily USW00013743). */
    public static WeatherRecord washington() {
        List<DailyWeather> days = new ArrayList<>();
        for (NamedCsvRecord row : SharedData.rows("weather/washington-dc/daily_ghcnd_USW00013743_1970-2012.csv")) {
            days.add(day(
                    LocalDate.parse(row.getField("date")),
                    SharedData.number(row, "tmin_tenths_c") / TENTHS,
                    SharedData.number(row, "tmax_tenths_c") / TENTHS,
                    Double.NaN));
        }
        return new WeatherRecord(days);
    }

    /** Peak bloom of the Washington cherries by year, 70 % of flowers open (US National Park Service). */
    public static SortedMap<Integer, LocalDate> cherryPeaks() {
        SortedMap<Integer, LocalDate> peaks = new TreeMap<>();
        for (NamedCsvRecord row : SharedData.rows("weather/washington-dc/peak_bloom_1970-2012.csv")) {
            peaks.put(Integer.valueOf(row.getField("year")), LocalDate.parse(row.getField("bloom_date")));
        }
        return peaks;
    }

    /**
     * The three winters of Möllmann et al. 2025 from 1 December 2022, read off their figure 1.
     *
     * @param group {@code control}, {@code SSP2-4.5} or {@code SSP5-8.5}
     */
    public static WeatherRecord moellmann(String group) {
        List<DailyWeather> days = new ArrayList<>();
        for (NamedCsvRecord row :
                SharedData.rows("osmia/moellmann-2025/digitised_daily_temperature_from_figure1.csv")) {
            if (row.getField("group").equals(group)) {
                double a = SharedData.number(row, "tmin");
                double b = SharedData.number(row, "tmax");
                // Reading a figure left a few days with a minimum 0.1 °C above the maximum: they are swapped.
                days.add(day(LocalDate.parse(row.getField("date")), Math.min(a, b), Math.max(a, b), Double.NaN));
            }
        }
        return new WeatherRecord(days);
    }

    /** Weather at a field site of 2015 published with Ruddle et al. 2018, from the day cocoons were placed. */
    public static WeatherRecord field2015(String study) {
        List<DailyWeather> days = new ArrayList<>();
        try {
            List<String> lines =
                    Files.readAllLines(SharedData.file("osmia/field-2015-bicornis/Weather_" + study + ".csv"));
            // date, day of year, mean, maximum, minimum, rain, humidity
            for (String line : lines.subList(FIELD_HEADER_LINES, lines.size())) {
                String[] cells = line.split(",", -1);
                days.add(day(LocalDate.parse(cells[0]), number(cells[4]), number(cells[3]), number(cells[5])));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return new WeatherRecord(days);
    }

    private static double number(String cell) {
        return Double.parseDouble(cell);
    }

    private static DailyWeather day(LocalDate date, double minC, double maxC, double rainMm) {
        return new DailyWeather(date, minC, maxC, rainMm, Double.NaN, Double.NaN);
    }
}
