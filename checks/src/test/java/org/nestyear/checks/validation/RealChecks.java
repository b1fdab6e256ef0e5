package org.nestyear.checks.validation;

import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.time.LocalDate;
import java.time.MonthDay;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SortedMap;
import java.util.function.Function;
import org.nestyear.checks.ReferenceWeather;
import org.nestyear.checks.SharedData;
import org.nestyear.checks.nesting.FieldSite;
import org.nestyear.core.bloom.ThermalDate;
import org.nestyear.core.emergence.EmergenceClock;
import org.nestyear.core.emergence.EmergenceSettings;
import org.nestyear.core.emergence.Storage;
import org.nestyear.core.emergence.ThermalSums;
import org.nestyear.core.flight.FlightDays;
import org.nestyear.core.place.Site;
import org.nestyear.core.release.Hindcast;
import org.nestyear.core.release.HindcastYear;
import org.nestyear.core.season.Batch;
import org.nestyear.core.season.BloomDates;
import org.nestyear.core.season.Goal;
import org.nestyear.core.season.NestKind;
import org.nestyear.core.season.Nests;
import org.nestyear.core.season.Plant;
import org.nestyear.core.season.SeasonFrame;
import org.nestyear.core.season.SeasonInputs;
import org.nestyear.core.season.SeasonWeather;
import org.nestyear.core.season.Wintered;
import org.nestyear.core.source.ParameterReader;
import org.nestyear.core.species.Sex;
import org.nestyear.core.weather.DailyWeather;
import org.nestyear.core.weather.HourlyTemperatures;
import org.nestyear.core.weather.WeatherRecord;

/** The checks against real data that a model, right or wrong, has to pass; each returns one number. */
final class RealChecks {
    private static final List<String> WINTERS = List.of("control", "SSP2-4.5", "SSP5-8.5");
    private static final double CABINET_LATITUDE = 49.8;
    private static final int DAYS_OF_DECEMBER_LESS_ONE = 30;
    private static final int GRID = 31;
    private static final double FIELD_READINESS = 160;

    private RealChecks() {}

    /**
     * Root mean square error of the twelve group means of three winters, d (Möllmann et al. 2025). A group of which
     * nothing comes out counts as off by the length of the series.
     */
    static double threeWinters(Function<String, ParameterReader> parameters) {
        double squares = 0;
        int groups = 0;
        for (NamedCsvRecord row : SharedData.rows("osmia/moellmann-2025/summary_by_group_derived.csv")) {
            String species = row.getField("species").replace("O. ", "Osmia ");
            Sex sex = row.getField("sex").equals("female") ? Sex.FEMALE : Sex.MALE;
            if (!WINTERS.contains(row.getField("temperature"))) {
                throw new IllegalStateException("unknown winter " + row.getField("temperature"));
            }
            WeatherRecord winter = ReferenceWeather.moellmann(row.getField("temperature"));
            double error = meanDay(EmergenceSettings.of(parameters.apply(species), sex), winter)
                    - SharedData.number(row, "emerg_doy_mean");
            squares += error * error;
            groups++;
        }
        return Math.sqrt(squares / groups);
    }

    private static double meanDay(EmergenceSettings settings, WeatherRecord winter) {
        ThermalSums sums = ThermalSums.ofHours(settings, hours(winter, CABINET_LATITUDE));
        double sum = 0;
        int out = 0;
        for (double time : new EmergenceClock(settings, GRID).times(sums, Storage.outdoors(0, 0))) {
            if (time != EmergenceClock.NOT_YET) {
                sum += Math.floor(time) - DAYS_OF_DECEMBER_LESS_ONE;
                out++;
            }
        }
        return out == 0 ? sums.days() : sum / out;
    }

    private static double[] hours(WeatherRecord record, double latitude) {
        List<DailyWeather> days = List.copyOf(record.days());
        return HourlyTemperatures.fromDailyRange(
                record.first(),
                days.stream().mapToDouble(DailyWeather::minC).toArray(),
                days.stream().mapToDouble(DailyWeather::maxC).toArray(),
                latitude);
    }

    /**
     * Mean absolute error of the share of females and males out at each check of the two field sites, in points
     * (Ruddle et al. 2018; of those that came out at all).
     */
    static double fieldEmergence(ParameterReader parameters) {
        double error = 0;
        int checks = 0;
        for (Sex sex : Sex.values()) {
            String column = sex == Sex.FEMALE ? "cumF_pct" : "cumM_pct";
            EmergenceSettings settings = EmergenceSettings.of(parameters, sex);
            for (FieldSite site : FieldSite.values()) {
                List<NamedCsvRecord> rows =
                        SharedData.rows("osmia/field-2015-bicornis/emergence_2015_summary.csv").stream()
                                .filter(r -> r.getField("study").equals(site.study()))
                                .toList();
                double last = SharedData.number(rows.get(rows.size() - 1), column);
                ThermalSums sums = ThermalSums.ofHours(settings, site.hourlyC(site.weather()));
                double[] times = new EmergenceClock(settings, GRID)
                        .times(sums, new Storage(0, FIELD_READINESS, 1, 0, 0))
                        .clone();
                for (NamedCsvRecord row : rows) {
                    double end = SharedData.number(row, "days_after_placing") + 1;
                    double out = 0;
                    for (double time : times) {
                        out += time < end ? 100.0 / times.length : 0;
                    }
                    error += Math.abs(out - 100 * SharedData.number(row, column) / last);
                    checks++;
                }
            }
        }
        return error / checks;
    }

    /** Correlation between the cells each female seen nesting built in three days and those the model allows her. */
    static double cellsCorrelation(ParameterReader parameters) {
        List<double[]> pairs = new ArrayList<>();
        for (FieldSite site : FieldSite.values()) {
            FlightDays flight = site.flight(parameters);
            site.nesting().forEach((day, females) -> {
                double potential = 0;
                for (int d = day; d < day + FieldSite.DAYS_BETWEEN_COUNTS; d++) {
                    potential += flight.cells(d);
                }
                double built = site.cells().getOrDefault(day + FieldSite.DAYS_BETWEEN_COUNTS, Double.NaN)
                        - site.cells().getOrDefault(day, Double.NaN);
                pairs.add(new double[] {potential, built / females});
            });
        }
        return correlation(pairs);
    }

    private static double correlation(List<double[]> pairs) {
        double n = pairs.size();
        double mx = pairs.stream().mapToDouble(p -> p[0]).sum() / n;
        double my = pairs.stream().mapToDouble(p -> p[1]).sum() / n;
        double xy = 0;
        double xx = 0;
        double yy = 0;
        for (double[] p : pairs) {
            xy += (p[0] - mx) * (p[1] - my);
            xx += (p[0] - mx) * (p[0] - mx);
            yy += (p[1] - my) * (p[1] - my);
        }
        return xy / Math.sqrt(xx * yy);
    }

    /** Root mean square error of the thermal-time date of the cherry's peak bloom, d. */
    static double bloom(ParameterReader parameters, SortedMap<Integer, LocalDate> peaks) {
        WeatherRecord record = ReferenceWeather.washington();
        double squares = 0;
        for (Map.Entry<Integer, LocalDate> peak : peaks.entrySet()) {
            SeasonFrame frame = SeasonFrame.ofYear(peak.getKey());
            LocalDate first = LocalDate.of(peak.getKey(), 1, 1);
            SeasonWeather season = SeasonWeather.assemble(frame, peak.getKey(), first, record::find)
                    .orElseThrow();
            int start = season.index(frame.ofDayOfYear(parameters.value("bloom_start_day")));
            double day = Math.floor(ThermalDate.of(
                            season, start, parameters.value("bloom_base_c"), parameters.value("bloom_sum")))
                    + 1;
            double error = day - peak.getValue().getDayOfYear();
            squares += error * error;
        }
        return Math.sqrt(squares / peaks.size());
    }

    /** Standard deviation of the observed dates about their mean, d: what a fixed date would miss by. */
    static double bloomMeanDate(SortedMap<Integer, LocalDate> peaks) {
        double mean = peaks.values().stream()
                .mapToInt(LocalDate::getDayOfYear)
                .average()
                .orElseThrow();
        return Math.sqrt(peaks.values().stream()
                .mapToDouble(d -> Math.pow(d.getDayOfYear() - mean, 2))
                .average()
                .orElseThrow());
    }

    /** Every spring of the Washington record decided on 1 March and rolling. */
    static List<HindcastYear> hindcast(ParameterReader belief, ParameterReader world, Goal goal) {
        SeasonInputs template = new SeasonInputs(
                new Site("Washington", 38.847, -77.035, 4, ZoneId.of("America/New_York"), null, List.of()),
                ReferenceWeather.washington(),
                null,
                List.of(new Batch("Osmia lignaria", "local", 200, 350, Wintered.FRIDGE, 150.0, 3.0)),
                List.of(new Nests(NestKind.TUBE, true, 8, 150, 500)),
                List.of(new Plant(
                        "cherry",
                        100,
                        true,
                        new BloomDates.ThermalTime(MonthDay.of(2, 1), 0, belief.value("bloom_sum"), 18))),
                null,
                goal,
                LocalDate.of(2012, 3, 1));
        return new Hindcast(template, ReferenceWeather.washington(), ReferenceWeather.cherryPeaks(), belief, world)
                .run(MonthDay.of(3, 1));
    }

    static String number(double value, int decimals) {
        return String.format(Locale.ROOT, "%." + decimals + "f", value);
    }
}
