package org.nestyear.core.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class GapFillingTest {
    private static final LocalDate START = LocalDate.of(2013, 1, 1);

    @Test
    void recordWithoutGapsIsReturnedAsItIs() {
        WeatherRecord record = threeYears(List.of());
        FilledWeather filled = GapFilling.fill(record);
        assertThat(filled.fillings()).isEmpty();
        assertThat(filled.weather()).isSameAs(record);
    }

    /** Day before 0/10 °C, day after 4/18 °C, three days between: steps of 1 and 2 °C. */
    @Test
    void threeDaysLieOnALine() {
        LocalDate first = LocalDate.of(2015, 4, 1);
        WeatherRecord record = new WeatherRecord(List.of(day(first, 0, 10), day(first.plusDays(4), 4, 18)));
        FilledWeather filled = GapFilling.fill(record);
        assertThat(filled.fillings())
                .containsExactly(new Filling(new Gap(first.plusDays(1), first.plusDays(3)), Filling.Method.LINEAR, 0));
        assertThat(filled.fillings().get(0).days()).isEqualTo(3);
        assertThat(get(filled, first.plusDays(1)).minC()).isCloseTo(1, within(1e-12));
        assertThat(get(filled, first.plusDays(2)).maxC()).isCloseTo(14, within(1e-12));
        assertThat(get(filled, first.plusDays(3)).minC()).isCloseTo(3, within(1e-12));
        assertThat(get(filled, first.plusDays(2)).rainMm()).isNaN();
        assertThat(get(filled, first.plusDays(2)).windMs()).isNaN();
        assertThat(get(filled, first.plusDays(2)).radiationMjM2()).isNaN();
        assertThat(filled.weather().gaps()).isEmpty();
    }

    /** The invented years are 2013 at 1, 2014 at 2 and 2015 at 3 °C: the mean of the other two stands in. */
    @Test
    void longerGapsTakeTheMeanOfTheOtherYears() {
        List<LocalDate> missing = days(LocalDate.of(2014, 5, 10), 4);
        FilledWeather filled = GapFilling.fill(threeYears(missing));
        assertThat(filled.fillings())
                .containsExactly(new Filling(
                        new Gap(LocalDate.of(2014, 5, 10), LocalDate.of(2014, 5, 13)), Filling.Method.CLIMATOLOGY, 2));
        assertThat(get(filled, LocalDate.of(2014, 5, 12)).minC()).isEqualTo(2);
        assertThat(get(filled, LocalDate.of(2014, 5, 12)).maxC()).isEqualTo(12);
        FilledWeather early = GapFilling.fill(threeYears(days(LocalDate.of(2013, 5, 10), 5)));
        assertThat(get(early, LocalDate.of(2013, 5, 10)).minC()).isEqualTo(2.5);
    }

    @Test
    void gapAtAnEndOfTheRecordHasNoLine() {
        List<DailyWeather> days = new ArrayList<>(threeYears(List.of()).days());
        LocalDate last = LocalDate.of(2016, 1, 1);
        days.add(new DailyWeather(last, Double.NaN, Double.NaN, 3, 4, 5));
        FilledWeather filled = GapFilling.fill(new WeatherRecord(days));
        assertThat(filled.fillings()).containsExactly(new Filling(new Gap(last, last), Filling.Method.CLIMATOLOGY, 3));
        assertThat(get(filled, last)).isEqualTo(new DailyWeather(last, 2, 12, 3, 4, 5));
    }

    @Test
    void yearsThatLackTheDayThemselvesDoNotCount() {
        List<LocalDate> missing = new ArrayList<>(days(LocalDate.of(2013, 5, 10), 4));
        missing.addAll(days(LocalDate.of(2014, 5, 10), 6));
        FilledWeather filled = GapFilling.fill(threeYears(missing));
        assertThat(get(filled, LocalDate.of(2013, 5, 10)).minC()).isEqualTo(3);
        assertThat(get(filled, LocalDate.of(2014, 5, 10)).minC()).isEqualTo(3);
        assertThat(get(filled, LocalDate.of(2014, 5, 15)).minC()).isEqualTo(2);
        assertThat(filled.fillings()).extracting(Filling::years).containsExactly(1, 1);
    }

    @Test
    void leapDayBorrowsTheTwentyEighth() {
        List<DailyWeather> days = new ArrayList<>();
        for (LocalDate d = LocalDate.of(2011, 1, 1); d.getYear() < 2013; d = d.plusDays(1)) {
            boolean gap = d.getYear() == 2012 && d.getMonthValue() == 2 && d.getDayOfMonth() >= 24;
            if (!gap) {
                days.add(day(d, d.getDayOfMonth(), d.getDayOfMonth() + 10.0));
            }
        }
        FilledWeather filled = GapFilling.fill(new WeatherRecord(days));
        assertThat(get(filled, LocalDate.of(2012, 2, 28)).minC()).isEqualTo(28);
        assertThat(get(filled, LocalDate.of(2012, 2, 29)).minC()).isEqualTo(28);
    }

    @Test
    void leapDayPrefersAnotherLeapDay() {
        List<DailyWeather> days = new ArrayList<>();
        for (LocalDate d = LocalDate.of(2011, 1, 1); d.getYear() < 2017; d = d.plusDays(1)) {
            boolean gap = d.getYear() == 2012 && d.getMonthValue() == 2 && d.getDayOfMonth() >= 24;
            if (!gap) {
                days.add(day(d, d.getDayOfMonth(), d.getDayOfMonth() + 10.0));
            }
        }
        assertThat(get(GapFilling.fill(new WeatherRecord(days)), LocalDate.of(2012, 2, 29))
                        .minC())
                .isEqualTo(29);
    }

    @Test
    void measuredTemperatureOutranksTheFilledOne() {
        LocalDate first = LocalDate.of(2015, 4, 1);
        WeatherRecord record = new WeatherRecord(List.of(
                day(first, 0, 10),
                day(first.plusDays(1), Double.NaN, -3),
                day(first.plusDays(2), 14, Double.NaN),
                day(first.plusDays(3), 0, 10)));
        FilledWeather filled = GapFilling.fill(record);
        assertThat(get(filled, first.plusDays(1)).maxC()).isEqualTo(-3);
        assertThat(get(filled, first.plusDays(1)).minC()).isEqualTo(-3);
        assertThat(get(filled, first.plusDays(2)).minC()).isEqualTo(14);
        assertThat(get(filled, first.plusDays(2)).maxC()).isEqualTo(14);
    }

    @Test
    void refusesWhatNoYearHasMeasured() {
        LocalDate first = LocalDate.of(2015, 4, 1);
        WeatherRecord record = new WeatherRecord(List.of(day(first, 0, 10), day(first.plusDays(5), 4, 18)));
        assertThatThrownBy(() -> GapFilling.fill(record))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("from 2015-04-02 to 2015-04-05")
                .hasMessageContaining("another station");
    }

    private static WeatherRecord threeYears(List<LocalDate> missing) {
        List<DailyWeather> days = new ArrayList<>();
        for (LocalDate d = START; d.getYear() < 2016; d = d.plusDays(1)) {
            if (!missing.contains(d)) {
                days.add(day(d, d.getYear() - 2012, d.getYear() - 2002));
            }
        }
        return new WeatherRecord(days);
    }

    private static List<LocalDate> days(LocalDate first, int count) {
        return first.datesUntil(first.plusDays(count)).toList();
    }

    private static DailyWeather day(LocalDate date, double minC, double maxC) {
        return new DailyWeather(date, minC, maxC, Double.NaN, Double.NaN, Double.NaN);
    }

    private static DailyWeather get(FilledWeather filled, LocalDate date) {
        return filled.weather().find(date).orElseThrow();
    }
}
