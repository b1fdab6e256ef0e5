package org.nestyear.app.service;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import org.nestyear.core.bloom.hourly.ChillPortions;
import org.nestyear.core.bloom.hourly.ChillingHours;
import org.nestyear.core.bloom.hourly.GrowingDegreeHours;
import org.nestyear.core.bloom.hourly.HourlySum;
import org.nestyear.core.bloom.hourly.UtahUnits;
import org.nestyear.core.source.Parameter;
import org.nestyear.core.source.ReadLog;
import org.nestyear.data.CatalogueFiles;

/**
 * The cold and warmth that fruit trees count over a run of days.
 *
 * @param chillingHours hours of cold
 * @param utahUnits chill units of the Utah model
 * @param chillPortions portions of the dynamic model
 * @param growingDegreeHours warmth, °C·h
 * @param days days summed
 * @param filledDays how many of them were missing and filled
 */
public record ChillAnswer(
        LocalDate from,
        LocalDate to,
        double chillingHours,
        double utahUnits,
        double chillPortions,
        double growingDegreeHours,
        int days,
        long filledDays,
        List<Parameter> basis,
        String fingerprint) {
    public ChillAnswer {
        basis = List.copyOf(basis);
    }

    /**
     * Sums up.
     *
     * @param latitudeDeg degrees north, for the length of the day
     * @throws Refusal if the table is wrong or does not hold the days
     */
    public static ChillAnswer of(Path file, double latitudeDeg, LocalDate from, LocalDate to) {
        WeatherSpan span = WeatherSpan.read(file, from, to);
        double[] hours = span.hoursC(latitudeDeg);
        ReadLog read = new ReadLog(CatalogueFiles.bloomModels());
        Fingerprint print = new Fingerprint(PlanService.catalogue().fingerprint());
        print.add(Arrays.toString(hours));
        return new ChillAnswer(
                from,
                to,
                sum(ChillingHours.of(read), hours),
                sum(UtahUnits.of(read), hours),
                sum(ChillPortions.of(read), hours),
                sum(GrowingDegreeHours.of(read), hours),
                span.days().size(),
                span.filledDays(),
                read.read(),
                print.digits());
    }

    private static double sum(HourlySum model, double[] hours) {
        return model.running(hours)[hours.length - 1];
    }
}
