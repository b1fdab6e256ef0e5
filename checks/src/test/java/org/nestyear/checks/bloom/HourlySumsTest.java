package org.nestyear.checks.bloom;

import static org.assertj.core.api.Assertions.assertThat;

import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.NavigableMap;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.nestyear.checks.Comparison;
import org.nestyear.checks.SharedData;
import org.nestyear.core.bloom.hourly.ChillPortions;
import org.nestyear.core.bloom.hourly.ChillingHours;
import org.nestyear.core.bloom.hourly.GrowingDegreeHours;
import org.nestyear.core.bloom.hourly.HourlySum;
import org.nestyear.core.bloom.hourly.UtahUnits;
import org.nestyear.core.source.ParameterReader;
import org.nestyear.core.weather.HourlyTemperatures;
import org.nestyear.data.CatalogueFiles;

/** Chill and heat against a reference program; tolerances as the README of that folder asks unless said otherwise. */
class HourlySumsTest {
    private static final double LATITUDE = 50.4;

    private final ParameterReader parameters = CatalogueFiles.bloomModels();
    private final HourlySum chilling = ChillingHours.of(parameters);
    private final HourlySum utah = UtahUnits.of(parameters);
    private final HourlySum portions = ChillPortions.of(parameters);
    private final HourlySum heat = GrowingDegreeHours.of(parameters);

    /** hourly_response_curves.csv: −5 to 40 °C by .1; weights exact, growing degree hours to 1e-9. */
    @Test
    void oneHourAtEachTemperature() {
        Comparison exact = new Comparison("chill of one hour", 0);
        Comparison growing = new Comparison("growing degree hours of one hour, °C·h", 1e-9);
        for (NamedCsvRecord row : SharedData.rows("reference/*/hourly_response_curves.csv")) {
            double[] hour = {SharedData.number(row, "temp_c")};
            String name = row.getField("temp_c") + " °C";
            exact.add(name + " chilling", chilling.running(hour)[0], SharedData.number(row, "chilling_hour"));
            exact.add(name + " Utah", utah.running(hour)[0], SharedData.number(row, "utah"));
            growing.add(name, heat.running(hour)[0], SharedData.number(row, "gdh"));
        }
        exact.check(2 * 451);
        growing.check(451);
    }

    /**
     * dynamic_model_patterns.csv: 2000 h at one temperature, or 16 h of night and 8 h of day for 2016 h. The reference
     * program writes beside each hour the portions reached when it began, ours are those when it ends.
     */
    @Test
    void portionsOfConstantAndAlternatingTemperatures() {
        Comparison sum = new Comparison("chill portions", 1e-6);
        Comparison first = new Comparison("hour of the first portion", 0);
        for (NamedCsvRecord row : SharedData.rows("reference/*/dynamic_model_patterns.csv")) {
            double day = SharedData.number(row, "temp_day");
            double night = SharedData.number(row, "temp_night");
            double[] hours = new double[Integer.parseInt(row.getField("hours"))];
            for (int h = 0; h < hours.length; h++) {
                hours[h] = h % 24 < 16 ? night : day;
            }
            double[] running = portions.running(hours);
            String name = row.getField("pattern") + " " + night + " to " + day + " °C";
            sum.add(name, running[running.length - 2], SharedData.number(row, "portions"));
            if (!row.getField("first_portion_hour").isEmpty()) {
                int hour = 0;
                while (running[hour] <= 0) {
                    hour++;
                }
                first.add(name, hour + 2, SharedData.number(row, "first_portion_hour"));
            }
        }
        sum.check(16);
        first.check(13);
    }

    /** season_hourly_first60days_2003-10.csv: 1440 hours with the four running sums beside each. */
    @Test
    void runningSumsOfMeasuredHours() {
        List<NamedCsvRecord> rows = SharedData.rows("reference/*/season_hourly_first60days_2003-10.csv");
        double[] hours =
                rows.stream().mapToDouble(row -> SharedData.number(row, "temp")).toArray();
        compare("ch", chilling.running(hours), rows, 0);
        compare("utah", utah.running(hours), rows, 0);
        compare("cp", whenHourBegan(portions.running(hours)), rows, 1e-6);
        compare("gdh", heat.running(hours), rows, 1e-6);
    }

    private static double[] whenHourBegan(double[] running) {
        double[] before = new double[running.length];
        System.arraycopy(running, 0, before, 1, running.length - 1);
        return before;
    }

    private static void compare(String column, double[] running, List<NamedCsvRecord> rows, double tolerance) {
        Comparison comparison = new Comparison("hours of autumn 2003, " + column, tolerance);
        for (int h = 0; h < running.length; h++) {
            NamedCsvRecord row = rows.get(h);
            comparison.add(
                    row.getField("date") + " " + row.getField("hour"), running[h], SharedData.number(row, column));
        }
        comparison.check(1440);
    }

    /**
     * season_totals_klein-altendorf.csv: 36 season totals from daily extremes through that program's own hours. Ours
     * never leave the range of the day and its do, by up to .3 °C (see HourlyTemperaturesTest), so the sums of months
     * differ: asked for here are 2.5 % of chill and 1.5 % of heat, and no more than 15 °C·h where heat is still small.
     */
    @Test
    void seasonTotalsThroughOurOwnHours() {
        NavigableMap<LocalDate, double[]> days = new TreeMap<>();
        for (NamedCsvRecord row : SharedData.rows("weather/klein-altendorf/chillR_KA_weather_1998-2010.csv")) {
            days.put(
                    LocalDate.parse(row.getField("date")),
                    new double[] {SharedData.number(row, "tmin_c"), SharedData.number(row, "tmax_c")});
        }
        Comparison hours = new Comparison("hours of the season", 0);
        Comparison chill = new Comparison("chill of the season, ours less theirs, share", 0.025);
        Comparison growing = new Comparison("heat of the season, ours less theirs, share beyond 15 °C·h", 0.015);
        for (NamedCsvRecord row : SharedData.rows("reference/*/season_totals_klein-altendorf.csv")) {
            LocalDate start = LocalDate.parse(row.getField("chill_start"));
            LocalDate end = LocalDate.parse(row.getField("end"));
            double[] temperatures = hours(days, start, end);
            String name = row.getField("season_end_year") + " to " + end;
            hours.add(name, temperatures.length, SharedData.number(row, "hours"));
            relative(chill, name + " hours", chilling, temperatures, SharedData.number(row, "chilling_hours"));
            relative(chill, name + " Utah", utah, temperatures, SharedData.number(row, "utah_units"));
            relative(chill, name + " portions", portions, temperatures, SharedData.number(row, "chill_portions"));
            double[] spring = hours(days, LocalDate.of(end.getYear(), 1, 1), end);
            double expected = SharedData.number(row, "gdh_from_jan1");
            double difference = Math.abs(last(heat.running(spring)) - expected);
            growing.add(name, Math.max(0, difference - 15) / expected, 0);
        }
        hours.check(36);
        chill.check(3 * 36);
        growing.check(36);
    }

    private static void relative(Comparison into, String name, HourlySum sum, double[] hours, double expected) {
        into.add(name, last(sum.running(hours)) / expected, 1);
    }

    private static double last(double[] values) {
        return values[values.length - 1];
    }

    private static double[] hours(NavigableMap<LocalDate, double[]> days, LocalDate from, LocalDate to) {
        List<double[]> part = List.copyOf(days.subMap(from, true, to, true).values());
        assertThat(part).hasSize((int) (to.toEpochDay() - from.toEpochDay()) + 1);
        return HourlyTemperatures.fromDailyRange(
                from,
                part.stream().mapToDouble(day -> day[0]).toArray(),
                part.stream().mapToDouble(day -> day[1]).toArray(),
                LATITUDE);
    }

    @Test
    void negativeUtahUnitsAreKept() {
        double[] hot = new double[5];
        Arrays.fill(hot, 25);
        assertThat(utah.running(hot)).containsExactly(-1, -2, -3, -4, -5);
    }
}
