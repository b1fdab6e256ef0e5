package org.nestyear.checks.bloom;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.nestyear.checks.Comparison;
import org.nestyear.checks.SharedData;
import org.nestyear.core.bloom.spring.SpringDates;
import org.nestyear.core.bloom.spring.SpringIndex;
import org.nestyear.data.CatalogueFiles;

class SpringIndexTest {
    private static final int DAYS = 240;

    private final SpringIndex index = new SpringIndex(CatalogueFiles.springIndex());

    /**
     * weather/us-six-stations: six stations in 1991–2010 as computed by the programs of the national phenology network
     * from the same NOAA GHCN-Daily temperatures. Every date must be equal.
     */
    @Test
    void sixStationsAgreeToTheDay() {
        Map<String, double[][]> weather = years("weather/us-six-stations/daily_1991-2010.csv", true, "");
        Map<String, Double> latitude = new HashMap<>();
        for (NamedCsvRecord row : SharedData.rows("weather/us-six-stations/stations.csv")) {
            latitude.put(row.getField("station"), SharedData.number(row, "lat"));
        }
        Comparison indices = new Comparison("spring index, d", 0);
        Comparison plants = new Comparison("spring index by plant, d", 0);
        for (NamedCsvRecord row : SharedData.rows("weather/us-six-stations/six_expected_1991-2010.csv")) {
            String station = row.getField("station");
            String name = station + " " + row.getField("year");
            SpringDates dates = dates(weather, name, latitude.getOrDefault(station, Double.NaN));
            indices.add(name + " leaf", dates.leaf(), SharedData.number(row, "leaf_index_npn"));
            indices.add(name + " bloom", dates.bloom(), SharedData.number(row, "bloom_index_npn"));
            List<String> names = List.of("lilac", "arnoldred", "zabelli");
            for (int p = 0; p < names.size(); p++) {
                String plant = names.get(p);
                plants.add(
                        name + " leaf " + plant, dates.leafByPlant().get(p), SharedData.number(row, "leaf_" + plant));
                plants.add(
                        name + " bloom " + plant,
                        dates.bloomByPlant().get(p),
                        SharedData.number(row, "bloom_" + plant));
            }
        }
        indices.check(2 * 119);
        plants.check(6 * 119);
    }

    /** Grand Meadow 1996 has 88 days missing: the network gives no index for it, nor do we. */
    @Test
    void aYearWithTooManyGapsHasNoIndex() {
        double[][] year = years("weather/us-six-stations/daily_1991-2010.csv", true, "")
                .getOrDefault("USC00213290 1996", new double[2][DAYS]);
        assertThat(index.of(year[0], year[1], 43.7)).isEmpty();
    }

    /** urbana_lilac_1961-1972.csv: index and lilac of twelve years, computed by the same programs. */
    @Test
    void urbanaAgreesToTheDay() {
        Map<String, double[][]> weather =
                years("weather/us-six-stations/urbana_USC00118740_daily_1960-1972.csv", false, "urbana");
        Comparison comparison = new Comparison("spring index at Urbana, d", 0);
        for (NamedCsvRecord row : SharedData.rows("weather/us-six-stations/urbana_lilac_1961-1972.csv")) {
            String name = "urbana " + row.getField("year");
            SpringDates dates = dates(weather, name, 40.0839);
            comparison.add(name + " leaf", dates.leaf(), SharedData.number(row, "six_leaf_index"));
            comparison.add(name + " bloom", dates.bloom(), SharedData.number(row, "six_bloom_index"));
            comparison.add(name + " lilac leaf", dates.leafByPlant().get(0), SharedData.number(row, "six_leaf_lilac"));
            comparison.add(
                    name + " lilac bloom", dates.bloomByPlant().get(0), SharedData.number(row, "six_bloom_lilac"));
        }
        comparison.check(4 * 12);
    }

    @Test
    void theSouthAndShortYearsAreRefused() {
        double[] year = new double[DAYS];
        assertThatThrownBy(() -> index.of(year, year, -33)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> index.of(new double[DAYS - 1], year, 40)).isInstanceOf(IllegalArgumentException.class);
    }

    private SpringDates dates(Map<String, double[][]> weather, String name, double latitude) {
        double[][] year = Optional.ofNullable(weather.get(name)).orElseThrow(() -> new AssertionError("no " + name));
        Optional<SpringDates> dates = index.of(year[0], year[1], latitude);
        assertThat(dates).as(name).isPresent();
        return dates.orElseThrow();
    }

    private static Map<String, double[][]> years(String path, boolean stations, String place) {
        Map<String, double[][]> years = new HashMap<>();
        for (NamedCsvRecord row : SharedData.rows(path)) {
            LocalDate date = LocalDate.parse(row.getField("date"));
            if (date.getDayOfYear() > DAYS) {
                continue;
            }
            String name = (stations ? row.getField("station") : place) + " " + date.getYear();
            double[][] year = years.computeIfAbsent(name, key -> empty());
            year[0][date.getDayOfYear() - 1] = celsius(row.getField("tmin_tenths_c"));
            year[1][date.getDayOfYear() - 1] = celsius(row.getField("tmax_tenths_c"));
        }
        return years;
    }

    private static double[][] empty() {
        double[][] year = new double[2][DAYS];
        Arrays.fill(year[0], Double.NaN);
        Arrays.fill(year[1], Double.NaN);
        return year;
    }

    private static double celsius(String tenths) {
        return tenths.isEmpty() ? Double.NaN : Integer.parseInt(tenths) / 10.0;
    }
}
