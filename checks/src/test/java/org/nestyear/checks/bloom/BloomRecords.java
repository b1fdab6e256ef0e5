package org.nestyear.checks.bloom;

import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.nestyear.checks.SharedData;
import org.nestyear.core.bloom.fit.BloomYear;
import org.nestyear.core.bloom.fit.YearCourses;
import org.nestyear.core.bloom.spring.SpringIndex;
import org.nestyear.core.weather.DailyWeather;
import org.nestyear.core.weather.GapFilling;
import org.nestyear.core.weather.WeatherRecord;
import org.nestyear.data.CatalogueFiles;

/** Observed blooms of the reference data with the weather that led to them. */
final class BloomRecords {
    private BloomRecords() {}

    static YearCourses courses(double latitude) {
        return new YearCourses(CatalogueFiles.bloomModels(), new SpringIndex(CatalogueFiles.springIndex()), latitude);
    }

    /** Yoshino cherry, peak bloom, National Park Service; weather NOAA GHCN-Daily USW00013743, tenths of °C. */
    static List<BloomYear> washington() {
        return years(
                SharedData.rows("weather/washington-dc/peak_bloom_1970-2012.csv"),
                "bloom_doy",
                tenths("weather/washington-dc/daily_ghcnd_USW00013743_1970-2012.csv"),
                38.847);
    }

    /** Cloned lilac at Urbana, Illinois, USA-NPN; weather NOAA GHCN-Daily USC00118740. */
    static List<BloomYear> urbana(String column) {
        return years(
                SharedData.rows("weather/us-six-stations/urbana_lilac_1961-1972.csv"),
                column,
                tenths("weather/us-six-stations/urbana_USC00118740_daily_1960-1972.csv"),
                40.0839);
    }

    /** A sweet cherry at Klein-Altendorf, first bloom; the weather record begins in 1998. */
    static List<BloomYear> kleinAltendorf() {
        List<DailyWeather> days = new ArrayList<>();
        for (NamedCsvRecord row : SharedData.rows("weather/klein-altendorf/chillR_KA_weather_1998-2010.csv")) {
            days.add(day(row, SharedData.number(row, "tmin_c"), SharedData.number(row, "tmax_c")));
        }
        return years(
                SharedData.rows("weather/klein-altendorf/chillR_KA_bloom_1984-2008.csv"),
                "first_bloom_doy",
                new WeatherRecord(days),
                50.61);
    }

    private static WeatherRecord tenths(String path) {
        Map<LocalDate, DailyWeather> days = new TreeMap<>();
        for (NamedCsvRecord row : SharedData.rows(path)) {
            DailyWeather day = day(row, celsius(row.getField("tmin_tenths_c")), celsius(row.getField("tmax_tenths_c")));
            days.put(day.date(), day);
        }
        return GapFilling.fill(new WeatherRecord(days.values())).weather();
    }

    private static DailyWeather day(NamedCsvRecord row, double minC, double maxC) {
        return new DailyWeather(LocalDate.parse(row.getField("date")), minC, maxC, Double.NaN, Double.NaN, Double.NaN);
    }

    private static double celsius(String tenths) {
        return tenths.isEmpty() ? Double.NaN : Integer.parseInt(tenths) / 10.0;
    }

    private static List<BloomYear> years(
            List<NamedCsvRecord> blooms, String column, WeatherRecord weather, double latitude) {
        YearCourses courses = courses(latitude);
        List<BloomYear> years = new ArrayList<>();
        for (NamedCsvRecord row : blooms) {
            if (row.getField(column).isEmpty()) {
                continue;
            }
            LocalDate bloom =
                    LocalDate.ofYearDay(Integer.parseInt(row.getField("year")), Integer.parseInt(row.getField(column)));
            BloomYear.of(bloom, weather, courses).ifPresent(years::add);
        }
        return years;
    }
}
