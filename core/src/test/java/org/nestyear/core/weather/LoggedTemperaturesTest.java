package org.nestyear.core.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class LoggedTemperaturesTest {
    private static final LocalDateTime START = LocalDateTime.parse("2024-03-09T22:10:00");

    private static LoggedTemperature at(double minutes, double celsius) {
        return new LoggedTemperature(START.plusSeconds(Math.round(minutes * 60)), celsius);
    }

    /** Straight from 0 to 4 °C in two hours: the first hour's mean is 1, the second's 3. */
    @Test
    void meansOfHoursLieOnTheLineBetweenReadings() {
        LoggedTemperatures log = new LoggedTemperatures(List.of(at(0, 0), at(120, 4), at(150, 4)));

        assertThat(log.hourlyC()).containsExactly(new double[] {1, 3}, within(1e-12));
        assertThat(log.first()).isEqualTo(START);
        assertThat(log.last()).isEqualTo(START.plusMinutes(150));
    }

    @Test
    void aGapIsReportedAndAnOddMinuteIsNot() {
        List<LoggedTemperature> readings = new ArrayList<>();
        for (int half = 0; half < 10; half++) {
            readings.add(at(30 * half + (half % 3), 20));
        }
        readings.add(at(300 + 60 * 5, 20));
        LoggedTemperatures log = new LoggedTemperatures(readings);

        assertThat(log.usualStepHours()).isEqualTo(0.5, within(0.06));
        assertThat(log.gaps()).containsExactly(new LogGap(START.plusMinutes(270), START.plusMinutes(600)));
        assertThat(log.gaps().get(0).hours()).isEqualTo(5.5, within(1e-12));
    }

    /** A logger that reads every six hours has no gap until it misses one. */
    @Test
    void aSlowLoggerHasNoGapsOfItsOwn() {
        assertThat(new LoggedTemperatures(List.of(at(0, 4), at(360, 4), at(720, 4))).gaps())
                .isEmpty();
        assertThat(new LoggedTemperatures(List.of(at(0, 4), at(360, 4), at(1080, 4), at(1440, 4))).gaps())
                .hasSize(1);
    }

    /** Whatever the readings, the hours together hold the area under the line, and none leaves its range. */
    @Test
    void hoursKeepTheAreaUnderTheLine() {
        SplittableRandom random = new SplittableRandom(20_260_601);
        int checked = 0;
        for (int run = 0; run < 200; run++) {
            List<LoggedTemperature> readings = new ArrayList<>();
            double minutes = 0;
            double area = 0;
            for (int i = 0; i < 2 + random.nextInt(60); i++) {
                readings.add(at(minutes, 10 + 20 * random.nextDouble()));
                minutes += 1 + random.nextInt(200);
            }
            // End on a whole hour, so that the area is that of whole hours.
            double end = 60 * Math.ceil(minutes / 60 + 0.5);
            readings.add(at(end, 15));
            for (int i = 1; i < readings.size(); i++) {
                double hours =
                        new LogGap(readings.get(i - 1).time(), readings.get(i).time()).hours();
                area += hours * (readings.get(i - 1).celsius() + readings.get(i).celsius()) / 2;
            }
            double[] means = new LoggedTemperatures(readings).hourlyC();
            double sum = 0;
            for (double mean : means) {
                assertThat(mean).isBetween(10.0, 30.0);
                sum += mean;
            }
            assertThat(means).hasSize((int) Math.round(end / 60));
            assertThat(sum).isEqualTo(area, within(1e-6));
            checked += means.length;
        }
        assertThat(checked).isGreaterThan(1000);
    }

    @Test
    void disorderAndTooFewReadingsAreRefused() {
        assertThatThrownBy(() -> new LoggedTemperatures(List.of(at(0, 1))))
                .hasMessage("a log needs two readings or more, got 1");
        assertThatThrownBy(() -> new LoggedTemperatures(List.of(at(10, 1), at(10, 2))))
                .hasMessageContaining("does not come after 2024-03-09T22:20");
        assertThatThrownBy(() -> at(0, Double.NaN)).hasMessageContaining("NaN °C");
    }
}
