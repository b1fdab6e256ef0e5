package org.nestyear.core.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Edges and properties of the day curve; the curve itself is checked against reference output in module checks. */
class HourlyTemperaturesTest {
    private static final LocalDate MARCH = LocalDate.of(2015, 3, 20);

    /** By hand: at solar hour 14 the sine of Linvill (1990) is at its crest, so the hour is the maximum. */
    @Test
    void highestTemperatureFallsAtSolarHourFourteen() {
        double[] hours =
                HourlyTemperatures.fromDailyRange(MARCH, new double[] {4, 6, 5}, new double[] {15, 18, 12}, 45);
        assertThat(hours).hasSize(72);
        assertThat(hours[14]).isCloseTo(15, within(1e-9));
        assertThat(hours[24 + 14]).isCloseTo(18, within(1e-9));
        assertThat(hours[48 + 14]).isCloseTo(12, within(1e-9));
    }

    /**
     * By hand, 20 March at the equator: sunrise 5.9444 h and day length 12.1111 h, so at noon the sine runs π · 6.0556 /
     * 16.1111 = 1.18080 rad, and 10 + 10 · sin 1.18080 = 19.2492 °C.
     */
    @Test
    void noonIsTheSineOfTheHoursSinceSunrise() {
        double[] hours = HourlyTemperatures.fromDailyRange(MARCH, new double[] {10}, new double[] {20}, 0);
        assertThat(hours[12]).isCloseTo(19.2492, within(1e-3));
    }

    @Test
    void everyHourStaysInsideItsDay() {
        Random random = new Random(20150320);
        for (double latitude = -85; latitude <= 85; latitude += 8.5) {
            double[] low = new double[366];
            double[] high = new double[366];
            for (int d = 0; d < low.length; d++) {
                low[d] = -20 + 40 * random.nextDouble();
                high[d] = low[d] + 25 * random.nextDouble();
            }
            double[] hours = HourlyTemperatures.fromDailyRange(LocalDate.of(2015, 7, 1), low, high, latitude);
            for (int i = 0; i < hours.length; i++) {
                assertThat(hours[i])
                        .as("latitude %s, hour %s of day %s", latitude, i % 24, i / 24)
                        .isBetween(low[i / 24], high[i / 24]);
            }
        }
    }

    @Test
    void endsWithoutANeighbourAreTheDaysMinimum() {
        double[] hours = HourlyTemperatures.fromDailyRange(MARCH, new double[] {4, 6}, new double[] {15, 18}, 45);
        assertThat(hours[0]).isEqualTo(4);
        assertThat(hours[5]).isEqualTo(4);
        assertThat(hours[24 + 19]).isEqualTo(6);
        assertThat(hours[24 + 23]).isEqualTo(6);
        assertThat(hours[23]).as("an evening with a next day").isBetween(6.0, 15.0);
    }

    @Test
    void polarNightIsFlatAndPolarDayFollowsTheSine() {
        double[] low = {-12, -12, -12};
        double[] high = {-4, -4, -4};
        double[] night = HourlyTemperatures.fromDailyRange(LocalDate.of(2015, 12, 20), low, high, 70);
        assertThat(night).containsOnly(-8);
        double[] day = HourlyTemperatures.fromDailyRange(LocalDate.of(2015, 6, 20), low, high, 70);
        assertThat(day[24]).isEqualTo(-12);
        assertThat(day[24 + 14]).isCloseTo(-4, within(1e-9));
        assertThat(day[24 + 7]).isCloseTo(-12 + 8 * Math.sin(Math.PI * 7 / 28), within(1e-9));
    }

    /** At 65.7° N around midsummer the night is shorter than the hour in which the logarithm still means something. */
    @Test
    void nightOfLessThanAnHourIsOverAtOnce() {
        double[] low = {5, 9, 5, 9};
        double[] high = {20, 12, 20, 12};
        double[] hours = HourlyTemperatures.fromDailyRange(LocalDate.of(2015, 6, 20), low, high, 65.7);
        for (int i = 0; i < hours.length; i++) {
            assertThat(hours[i]).isBetween(low[i / 24], high[i / 24]);
        }
        assertThat(hours[24]).isEqualTo(9);
        assertThat(hours[48]).isEqualTo(5);
    }

    @Test
    void acrossTheEndOfALeapYear() {
        double[] low = {1, 2, 3};
        double[] high = {6, 7, 8};
        double[] hours = HourlyTemperatures.fromDailyRange(LocalDate.of(2012, 12, 30), low, high, 50);
        assertThat(hours).hasSize(72).doesNotContain(Double.NaN);
        assertThat(hours[24 + 14]).isCloseTo(7, within(1e-9));
    }

    @Test
    void noDaysGiveNoHours() {
        assertThat(HourlyTemperatures.fromDailyRange(MARCH, new double[0], new double[0], 45))
                .isEmpty();
    }

    @Test
    void refusesMissingAndSwappedTemperaturesNamingTheDay() {
        assertThatThrownBy(() ->
                        HourlyTemperatures.fromDailyRange(MARCH, new double[] {1, Double.NaN}, new double[] {5, 6}, 45))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("2015-03-21");
        assertThatThrownBy(() -> HourlyTemperatures.fromDailyRange(MARCH, new double[] {8.4}, new double[] {3.1}, 45))
                .hasMessageContaining("8.4")
                .hasMessageContaining("3.1")
                .hasMessageContaining("2015-03-20");
        assertThatThrownBy(() -> HourlyTemperatures.fromDailyRange(
                        MARCH, new double[] {1}, new double[] {Double.POSITIVE_INFINITY}, 45))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> HourlyTemperatures.fromDailyRange(MARCH, new double[1], new double[2], 45))
                .hasMessageContaining("1 minimum and 2 maximum");
        assertThatThrownBy(
                        () -> HourlyTemperatures.fromDailyRange(MARCH, new double[] {1}, new double[] {2}, Double.NaN))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
