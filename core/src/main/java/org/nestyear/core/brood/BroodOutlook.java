package org.nestyear.core.brood;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.nestyear.core.source.ParameterReader;
import org.nestyear.core.stats.Quantiles;
import org.nestyear.core.weather.HourlyTemperatures;
import org.nestyear.core.weather.WeatherRecord;

/**
 * When the last cells of a season are spun and adult, over past summers and both clocks.
 *
 * @param lastEgg day of the last eggs it is reckoned from
 * @param spunEarly one case in twenty is spun before this, or null where that comes after the last day looked at
 * @param spunLate and one in twenty after this
 * @param adultEarly one case in twenty is adult before this
 * @param adultLate and one in twenty after this
 * @param notAdult share of cases not adult by the last day looked at, 0 to 1
 * @param summers summers that were run
 */
public record BroodOutlook(
        LocalDate lastEgg,
        @Nullable LocalDate spunEarly,
        @Nullable LocalDate spunLate,
        @Nullable LocalDate adultEarly,
        @Nullable LocalDate adultLate,
        double notAdult,
        int summers) {
    /** Days after the last egg that are looked at; numerical. */
    private static final int DAYS = 190;
    /** One case in twenty; numerical. */
    private static final double LOW = 0.05;
    /** The same from above; numerical. */
    private static final double HIGH = 0.95;

    /**
     * Runs the past summers.
     *
     * @param lastEgg day of the last eggs
     * @param known weather without gaps
     * @param latitudeDeg degrees north
     * @return nothing if no past summer is whole
     */
    public static Optional<BroodOutlook> of(
            LocalDate lastEgg, WeatherRecord known, double latitudeDeg, ParameterReader parameters) {
        List<BroodClock> clocks = BroodClock.both(parameters);
        List<Double> spun = new ArrayList<>();
        List<Double> adult = new ArrayList<>();
        int summers = 0;
        for (int year = known.first().getYear(); year <= known.last().getYear(); year++) {
            LocalDate from = lastEgg.withYear(year);
            if (from.isBefore(known.first()) || from.plusDays(DAYS - 1L).isAfter(known.last())) {
                continue;
            }
            double[] hourlyC = HourlyTemperatures.ofDays(known, from, DAYS, latitudeDeg);
            for (BroodClock clock : clocks) {
                BroodClock.Ages ages = clock.run(hourlyC);
                spun.add(ages.spunDays());
                adult.add(ages.adultDays());
            }
            summers++;
        }
        return summers == 0
                ? Optional.empty()
                : Optional.of(new BroodOutlook(
                        lastEgg,
                        date(lastEgg, spun, LOW),
                        date(lastEgg, spun, HIGH),
                        date(lastEgg, adult, LOW),
                        date(lastEgg, adult, HIGH),
                        adult.stream().filter(age -> age.isInfinite()).count() / (double) adult.size(),
                        summers));
    }

    private static @Nullable LocalDate date(LocalDate lastEgg, List<Double> ages, double share) {
        double[] sorted = ages.stream()
                .mapToDouble(age -> age.isInfinite() ? DAYS : age)
                .sorted()
                .toArray();
        double age = Quantiles.of(Arrays.copyOf(sorted, sorted.length), share);
        return age >= DAYS ? null : lastEgg.plusDays((long) Math.ceil(age));
    }
}
