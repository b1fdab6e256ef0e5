package org.nestyear.checks.fit;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.nestyear.checks.ReferenceWeather;
import org.nestyear.checks.SharedData;
import org.nestyear.core.species.Sex;
import org.nestyear.core.weather.DailyWeather;
import org.nestyear.core.weather.HourlyTemperatures;
import org.nestyear.core.weather.WeatherRecord;

/**
 * What the clock is fitted to: 994 bees of three simulated winters, day by day (Möllmann et al. 2025, J. Insect Physiol.
 * 104811, data MIT), and the checks at two field sites in 2015 (Ruddle et al. 2018, tables published with Schmolke et al.
 * 2023).
 */
final class FitData {
    /** The winters of the climate cabinets. */
    static final List<String> WINTERS = List.of("control", "SSP2-4.5", "SSP5-8.5");
    /** The field sites. */
    static final List<String> SITES = List.of("S15-01802", "S15-01803");

    static final List<String> SPECIES = List.of("Osmia bicornis", "Osmia cornuta");

    /** Latitudes of the cabinets' day length and of the two sites, degrees north. */
    private static final Map<String, Double> LATITUDE = Map.of("winter", 49.8, "S15-01802", 48.9, "S15-01803", 48.5);
    /** Index 0 of the winters is 1 December 2022; index 31 is day 1 of 2023. */
    static final int DAYS_OF_DECEMBER = 31;

    /** Bees of one kind that came out at one winter or site, by interval. */
    static final class Group {
        private final String place;
        private final String species;
        private final Sex sex;
        private final int[] ends;
        private final double[] counts;

        Group(String place, String species, Sex sex, int[] ends, double[] counts) {
            this.place = place;
            this.species = species;
            this.sex = sex;
            this.ends = ends;
            this.counts = counts;
        }

        String place() {
            return place;
        }

        String species() {
            return species;
        }

        Sex sex() {
            return sex;
        }

        /** Day index, exclusive, at which each interval ends; the first begins at day 0. */
        int[] ends() {
            return ends;
        }

        /** Bees found in each interval. */
        double[] counts() {
            return counts;
        }

        boolean isField() {
            return SITES.contains(place);
        }

        double bees() {
            double sum = 0;
            for (double n : counts) {
                sum += n;
            }
            return sum;
        }

        String label() {
            return place + ", " + species.replace("Osmia", "O.") + " " + (sex == Sex.FEMALE ? "females" : "males");
        }
    }

    private final Map<String, double[]> hours = new TreeMap<>();
    private final List<Group> groups = new ArrayList<>();

    private FitData() {}

    /** All data, or a skipped test where they are absent. */
    static FitData load() {
        FitData data = new FitData();
        for (String winter : WINTERS) {
            data.hours.put(winter, hourly(ReferenceWeather.moellmann(winter), "winter"));
        }
        data.addWinters();
        for (String site : SITES) {
            WeatherRecord weather = ReferenceWeather.field2015(site);
            data.hours.put(site, hourly(weather, site));
            data.groups.add(field(site, weather.first(), Sex.FEMALE, "females"));
            data.groups.add(field(site, weather.first(), Sex.MALE, "males"));
        }
        return data;
    }

    List<Group> groups() {
        return groups;
    }

    /** Hourly temperatures of a winter or site, °C. */
    double[] hours(String place) {
        return hours.getOrDefault(place, new double[0]);
    }

    private static double[] hourly(WeatherRecord weather, String place) {
        if (!weather.gaps().isEmpty()) {
            throw new IllegalStateException("days are missing in the weather of " + place);
        }
        double[] min = weather.days().stream().mapToDouble(DailyWeather::minC).toArray();
        double[] max = weather.days().stream().mapToDouble(DailyWeather::maxC).toArray();
        return HourlyTemperatures.fromDailyRange(weather.first(), min, max, LATITUDE.getOrDefault(place, Double.NaN));
    }

    /** Rows of the bees that came out of their cocoons by themselves and alive in the winters. */
    static List<NamedCsvRecord> wintersBees() {
        try (CsvReader<NamedCsvRecord> rows = CsvReader.builder()
                .fieldSeparator('\t')
                .ofNamedCsvRecord(SharedData.file("osmia/moellmann-2025/3_raw_data.tsv"))) {
            return rows.stream()
                    .filter(row -> row.getField("genus").equals("Osmia")
                            && row.getField("emergence_status").equals("emerged")
                            && row.getField("emergence_condition").equals("alive"))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void addWinters() {
        Map<String, double[]> counts = new TreeMap<>();
        for (NamedCsvRecord row : wintersBees()) {
            String winter = row.getField("temperature");
            int days = hours(winter).length / 24;
            int day = (int) SharedData.number(row, "julian_emergence_date") + DAYS_OF_DECEMBER - 1;
            counts.computeIfAbsent(
                            key(winter, row.getField("species").replace("O. ", "Osmia "), row.getField("sex")),
                            k -> new double[days])[day]++;
        }
        for (String species : SPECIES) {
            for (String winter : WINTERS) {
                for (Sex sex : Sex.values()) {
                    int days = hours(winter).length / 24;
                    int[] ends = new int[days];
                    for (int d = 0; d < days; d++) {
                        ends[d] = d + 1;
                    }
                    String key = key(winter, species, sex.name().toLowerCase(Locale.ROOT));
                    groups.add(new Group(winter, species, sex, ends, counts.getOrDefault(key, new double[0])));
                }
            }
        }
    }

    private static String key(String winter, String species, String sex) {
        return winter + "|" + species + "|" + sex;
    }

    private static Group field(String site, LocalDate first, Sex sex, String column) {
        List<NamedCsvRecord> rows = SharedData.rows("osmia/field-2015-bicornis/emergence_2015_summary.csv").stream()
                .filter(row -> row.getField("study").equals(site))
                .toList();
        int[] ends = rows.stream()
                .mapToInt(row -> (int) (LocalDate.parse(row.getField("date")).toEpochDay() - first.toEpochDay()) + 1)
                .toArray();
        double[] counts =
                rows.stream().mapToDouble(row -> SharedData.number(row, column)).toArray();
        return new Group(site, "Osmia bicornis", sex, ends, counts);
    }
}
