package org.nestyear.checks.nesting;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.nestyear.checks.Comparison;
import org.nestyear.checks.ReferenceWeather;
import org.nestyear.core.bloom.BloomForecast;
import org.nestyear.core.bloom.BloomSettings;
import org.nestyear.core.bloom.FoodCurve;
import org.nestyear.core.flight.FlightDays;
import org.nestyear.core.flight.FlightSettings;
import org.nestyear.core.flight.SkyHours;
import org.nestyear.core.nesting.FemaleValue;
import org.nestyear.core.nesting.NestingResult;
import org.nestyear.core.nesting.NestingRun;
import org.nestyear.core.nesting.NestingSettings;
import org.nestyear.core.nesting.TunnelStock;
import org.nestyear.core.season.BloomDates;
import org.nestyear.core.season.Plant;
import org.nestyear.core.season.SeasonFrame;
import org.nestyear.core.season.SeasonWeather;
import org.nestyear.core.source.ParameterTable;
import org.nestyear.core.weather.HourlyTemperatures;
import org.nestyear.core.weather.WeatherRecord;
import org.nestyear.data.CatalogueFiles;

/** The day-by-day season and the sum over single females are two ways to the same number. */
@Tag("regression")
class SumOfFemalesTest {
    private static final double LATITUDE = 38.847;
    private static final ParameterTable TABLE =
            CatalogueFiles.load().find("Osmia lignaria").orElseThrow().parameters();
    private static final NestingSettings SETTINGS = NestingSettings.of(TABLE);

    private static FemaleValue value(int year, TunnelStock tunnels) {
        WeatherRecord record = ReferenceWeather.washington();
        LocalDate from = LocalDate.of(year, 1, 1);
        SeasonWeather season = SeasonWeather.assemble(SeasonFrame.ofYear(year), year, from, record::find)
                .orElseThrow();
        double[] hourly = HourlyTemperatures.fromDailyRange(from, season.minC(), season.maxC(), LATITUDE);
        FlightDays flight =
                FlightDays.of(FlightSettings.of(TABLE), season, hourly, SkyHours.of(from, season.days(), LATITUDE));
        Plant cherry = new Plant("cherry", 0, true, new BloomDates.ThermalTime(MonthDay.of(2, 1), 0, 424, 18));
        FoodCurve food = new BloomForecast(List.of(cherry), null, BloomSettings.of(TABLE), List.of(season), from)
                .curve(season, 0, 1);
        return new FemaleValue(SETTINGS, tunnels, flight, food);
    }

    /** Females out on each day: a hundred over three weeks from day {@code from}, most of them in the middle. */
    private static double[] out(int days, int from) {
        double[] out = new double[days];
        for (int d = 0; d < 21; d++) {
            out[from + d] = (11 - Math.abs(d - 10)) * 100.0 / 121;
        }
        return out;
    }

    /**
     * With tunnels to spare nothing in a season depends on other bees, so the two must agree: daughters to 1e-9, which is
     * rounding; cells to 1e-6, since the day-by-day season ends when fewer than a millionth of a female is left.
     */
    @Test
    void withTunnelsToSpareTheyAgree() {
        TunnelStock plenty = new TunnelStock(1_000_000, 8.8, 1, 0.7);
        Comparison daughters = new Comparison("daughters, season against sum", 1e-9);
        Comparison cells = new Comparison("cells, season against sum", 1e-6);
        for (int year = 1975; year <= 2010; year += 5) {
            FemaleValue value = value(year, plenty);
            double[] out = out(value.days(), 70);
            double[] mated = new double[value.days()];
            double byFemale = 0;
            double cellsByFemale = 0;
            for (int d = 0; d < out.length; d++) {
                mated[d] = 1 - 0.5 / (1 + d);
                byFemale += out[d] * mated[d] * value.daughters(d);
                cellsByFemale += out[d] * value.cells(d);
            }
            NestingResult run = new NestingRun(value, SETTINGS, plenty).run(out, mated);
            daughters.add("year " + year, run.daughters(), byFemale);
            cells.add("year " + year, run.cells(), cellsByFemale);
            assertThat(byFemale).isGreaterThan(10);
        }
        daughters.check(8);
        cells.check(8);
    }

    /** Fewer tunnels, fewer cells; none, none; and never more cells than the tunnels begun can hold. */
    @Test
    void tunnelsAreALimit() {
        double last = Double.POSITIVE_INFINITY;
        for (int count : new int[] {1000, 100, 40, 10, 1, 0}) {
            TunnelStock stock = new TunnelStock(count, 8.8, 1, 0.7);
            FemaleValue value = value(2000, stock);
            double[] mated = new double[value.days()];
            Arrays.fill(mated, 1);
            NestingResult run = new NestingRun(value, SETTINGS, stock).run(out(value.days(), 70), mated);
            System.out.println(count + " tunnels: " + run.cells() + " cells, " + run.tunnelsUsed() + " begun");
            assertThat(run.cells()).isLessThanOrEqualTo(last).isLessThanOrEqualTo(run.tunnelsUsed() * 8.8 + 1e-9);
            assertThat(run.tunnelsUsed()).isLessThanOrEqualTo(count);
            last = run.cells();
        }
        assertThat(last).isZero();
    }
}
