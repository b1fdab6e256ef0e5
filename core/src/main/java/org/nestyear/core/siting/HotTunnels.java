package org.nestyear.core.siting;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.MonthDay;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import org.nestyear.core.place.Site;
import org.nestyear.core.source.Parameter;
import org.nestyear.core.stats.Quantiles;
import org.nestyear.core.sun.ClearSky;
import org.nestyear.core.sun.Facade;
import org.nestyear.core.sun.Front;
import org.nestyear.core.sun.Observer;
import org.nestyear.core.sun.SunPosition;
import org.nestyear.core.sun.SunTimes;
import org.nestyear.core.weather.DailyWeather;
import org.nestyear.core.weather.HourlyTemperatures;
import org.nestyear.core.weather.WeatherRecord;

/**
 * How hot the tunnels of a front got in a week of the year, over the years of a weather record.
 *
 * <p>Temperature in a tunnel = air + excess, the excess in proportion to the light on the front. The hour's air comes from
 * the day's range ({@link HourlyTemperatures}), the light from a clear sky: hot days are taken to be clear ones. No clean
 * published value of the excess is known; the coefficient is a guess that the keeper may set.
 *
 * @param days days of the record looked at
 * @param oneInTenC the day's hottest hour that one day in ten surpasses, °C
 * @param watchShare share of the days whose hottest hour lies above the limit to watch
 * @param urgentShare share of them above the urgent limit
 */
public record HotTunnels(int days, double oneInTenC, double watchShare, double urgentShare) {
    /** Hours of a day, by definition. */
    private static final int HOURS = 24;
    /** Noon by the sun, by definition. */
    private static final int NOON = 12;
    /** The warmest day in ten, by definition of the answer. */
    private static final double NINE_IN_TEN = 0.9;
    /** W/m² that the coefficient is told for, by definition. */
    private static final double PER_LIGHT_W_M2 = 100;
    /** Half a year; numerical, to find the nearest date of the same name. */
    private static final int HALF_YEAR_DAYS = 183;

    /**
     * Limits and excess.
     *
     * @param excessC how much warmer than the air a tunnel is, °C for 100 W/m² on the front
     * @param watchC hottest hour above which it is to be watched, °C
     * @param urgentC hottest hour above which something is to be done, °C
     */
    public record Limits(double excessC, double watchC, double urgentC) {
        /** The limits with another excess, °C for 100 W/m². */
        public Limits withExcess(double other) {
            return new Limits(other, watchC, urgentC);
        }

        /** From the catalogue's rows. */
        public static Limits of(Parameter excess, Parameter watch, Parameter urgent) {
            return new Limits(excess.value(), watch.value(), urgent.value());
        }
    }

    /**
     * The clear-sky light on a front at each hour by the sun of a day, W/m²; 24 numbers.
     */
    public static double[] clearLightWm2(Front front, LocalDate date) {
        Observer observer = Observer.at(front.site());
        Instant noon = SunTimes.of(observer, date, front.site().zone()).transit();
        double[] light = new double[HOURS];
        for (int hour = 0; hour < HOURS; hour++) {
            SunPosition sun = SunPosition.of(observer, noon.plus(Duration.ofHours(hour - NOON)));
            if (sun.elevationDeg() > 0) {
                light[hour] = front.irradianceWm2(sun, ClearSky.at(sun.zenithDeg()), Facade.CUSTOMARY_ALBEDO);
            }
        }
        return light;
    }

    /**
     * The days of a record whose date lies in the week around a day of the year, each as 24 hourly temperatures, °C.
     *
     * @param middle the middle of the week
     * @param eitherSide days before it and after it that belong to it
     */
    public static List<double[]> hours(WeatherRecord record, Site site, LocalDate middle, int eitherSide) {
        List<double[]> hours = new ArrayList<>();
        for (DailyWeather day : record.days()) {
            if (day.hasTemperatures() && isNear(day.date(), middle, eitherSide)) {
                hours.add(HourlyTemperatures.fromDailyRange(
                        day.date(), new double[] {day.minC()}, new double[] {day.maxC()}, site.latitudeDeg()));
            }
        }
        return hours;
    }

    private static boolean isNear(LocalDate date, LocalDate middle, int eitherSide) {
        LocalDate same = MonthDay.from(middle).atYear(date.getYear());
        long apart = Math.abs(ChronoUnit.DAYS.between(same, date));
        if (apart > HALF_YEAR_DAYS) {
            apart = Math.abs(ChronoUnit.DAYS.between(same.plusYears(date.isAfter(same) ? 1 : -1), date));
        }
        return apart <= eitherSide;
    }

    /**
     * The tunnels of a front over such days.
     *
     * @param hourlyC days of 24 temperatures, °C
     * @param lightWm2 24 numbers, W/m²
     * @throws IllegalArgumentException if there is no day
     */
    public static HotTunnels of(List<double[]> hourlyC, double[] lightWm2, Limits limits) {
        if (hourlyC.isEmpty()) {
            throw new IllegalArgumentException("no day of the record has both temperatures");
        }
        double[] hottest = new double[hourlyC.size()];
        int watch = 0;
        int urgent = 0;
        for (int d = 0; d < hottest.length; d++) {
            double most = Double.NEGATIVE_INFINITY;
            for (int hour = 0; hour < HOURS; hour++) {
                most = Math.max(most, hourlyC.get(d)[hour] + limits.excessC() * lightWm2[hour] / PER_LIGHT_W_M2);
            }
            hottest[d] = most;
            watch += most > limits.watchC() ? 1 : 0;
            urgent += most > limits.urgentC() ? 1 : 0;
        }
        return new HotTunnels(
                hottest.length,
                Quantiles.of(hottest, NINE_IN_TEN),
                (double) watch / hottest.length,
                (double) urgent / hottest.length);
    }
}
