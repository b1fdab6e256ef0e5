package org.nestyear.checks.nesting;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.time.LocalDate;
import java.util.List;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import org.nestyear.checks.ReferenceWeather;
import org.nestyear.checks.SharedData;
import org.nestyear.core.flight.FlightDays;
import org.nestyear.core.flight.FlightSettings;
import org.nestyear.core.flight.SkyHours;
import org.nestyear.core.season.SeasonFrame;
import org.nestyear.core.season.SeasonWeather;
import org.nestyear.core.source.ParameterReader;
import org.nestyear.core.weather.DailyWeather;
import org.nestyear.core.weather.HourlyTemperatures;
import org.nestyear.core.weather.WeatherRecord;

/**
 * A field site of 2015 where 480 females of O. bicornis were put out in eight boxes and counted every third day (Ruddle
 * et al. 2018, tables published with Schmolke et al. 2023).
 */
public enum FieldSite {
    NIEFERN("S15-01802", 48.9),
    TUEBINGEN("S15-01803", 48.5);

    /** Days from placing to the last count. */
    static final int DAYS = 36;

    public static final int DAYS_BETWEEN_COUNTS = 3;
    static final int FEMALES = 480;

    private final String study;
    private final double latitudeDeg;

    FieldSite(String study, double latitudeDeg) {
        this.study = study;
        this.latitudeDeg = latitudeDeg;
    }

    /** The study under which the site was published. */
    public String study() {
        return study;
    }

    /** Weather from the day of placing, index 0; after the record its last day is repeated and never used. */
    public SeasonWeather weather() {
        WeatherRecord record = ReferenceWeather.field2015(study);
        DailyWeather last = record.find(record.last()).orElseThrow();
        return SeasonWeather.assemble(
                        SeasonFrame.ofYear(record.first().getYear()),
                        record.first().getYear(),
                        record.first(),
                        date -> date.isAfter(record.last())
                                ? Optional.of(new DailyWeather(
                                        date, last.minC(), last.maxC(), last.rainMm(), Double.NaN, Double.NaN))
                                : record.find(date))
                .orElseThrow();
    }

    public double[] hourlyC(SeasonWeather weather) {
        return HourlyTemperatures.fromDailyRange(weather.date(0), weather.minC(), weather.maxC(), latitudeDeg);
    }

    public FlightDays flight(ParameterReader parameters) {
        SeasonWeather weather = weather();
        LocalDate first = weather.date(0);
        return FlightDays.of(
                FlightSettings.of(parameters),
                weather,
                hourlyC(weather),
                SkyHours.of(first, weather.days(), latitudeDeg));
    }

    /** Cells built by the end of each check, all boxes together, by days after placing. */
    public NavigableMap<Integer, Double> cells() {
        return counts("CellProd_");
    }

    /** Females seen nesting on the night of each check, all boxes together, by days after placing. */
    public NavigableMap<Integer, Double> nesting() {
        return counts("NestOccup_");
    }

    private NavigableMap<Integer, Double> counts(String table) {
        TreeMap<Integer, Double> counts = new TreeMap<>();
        try {
            List<String> lines =
                    Files.readAllLines(SharedData.file("osmia/field-2015-bicornis/" + table + study + ".csv"));
            // date, days after placing, box, count
            for (String line : lines.subList(1, lines.size())) {
                String[] cells = line.split(",", -1);
                counts.merge(Integer.valueOf(cells[1]), Double.valueOf(cells[3]), Double::sum);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return counts;
    }
}
