package org.nestyear.app.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ScalesTest {
    private static final LocalDate MARCH = LocalDate.of(2015, 3, 1);

    @Test
    void aNumberFallsWhereItsShareOfTheScaleIs() {
        LinearScale up = new LinearScale(0, 2, 300, 100);
        assertThat(up.at(0)).isEqualTo(300);
        assertThat(up.at(0.5)).isEqualTo(250);
        assertThat(up.at(2)).isEqualTo(100);
        assertThat(up.at(-1)).isEqualTo(400);
    }

    @ParameterizedTest
    @CsvSource({
        "0, 1, 5, 0.2",
        "0, 1.46, 8, 0.2",
        "0, 97, 5, 20",
        "-3, 3, 4, 2",
        "0.01, 0.013, 3, 0.001",
        "0, 10, 10, 1"
    })
    void ticksAreRoundEvenAndFew(double low, double high, int most, double step) {
        List<Double> ticks = new LinearScale(low, high, 0, 100).ticks(most);
        assertThat(ticks).hasSizeBetween(2, most + 1);
        for (int i = 1; i < ticks.size(); i++) {
            assertThat(ticks.get(i) - ticks.get(i - 1)).isCloseTo(step, within(step * 1e-9));
        }
        assertThat(ticks.get(0)).isBetween(low - step * 1e-6, low + step);
        assertThat(ticks.get(ticks.size() - 1)).isBetween(high - step, high + step * 1e-6);
    }

    @Test
    void aScaleWithoutLengthOrWithAHoleInItIsRefused() {
        assertThatThrownBy(() -> new LinearScale(1, 1, 0, 10)).hasMessageContaining("1.0 to 1.0");
        assertThatThrownBy(() -> new LinearScale(0, Double.NaN, 0, 10)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new DateScale(MARCH, MARCH, 0, 10)).hasMessageContaining("2015-03-01");
    }

    @Test
    void aDayFallsWhereItsCountOfDaysIs() {
        DateScale days = new DateScale(MARCH, MARCH.plusDays(10), 50, 150);
        assertThat(days.at(MARCH)).isEqualTo(50);
        assertThat(days.at(MARCH.plusDays(3))).isEqualTo(80);
        assertThat(days.leftEdge(MARCH.plusDays(3))).isEqualTo(75);
        assertThat(days.rightEdge(MARCH.plusDays(3))).isEqualTo(85);
        assertThat(days.leftEdge(MARCH)).isEqualTo(50);
        assertThat(days.clamp(MARCH.minusDays(9))).isEqualTo(MARCH);
        assertThat(days.clamp(MARCH.plusDays(99))).isEqualTo(MARCH.plusDays(10));
        assertThat(days.holds(MARCH.plusDays(11))).isFalse();
    }

    @Test
    void datesAlongTheAxisAreAsManyAsFit() {
        DateScale spring = new DateScale(LocalDate.of(2015, 3, 10), LocalDate.of(2015, 5, 29), 0, 100);
        assertThat(spring.ticks(10))
                .containsExactly(
                        LocalDate.of(2015, 3, 11),
                        LocalDate.of(2015, 3, 21),
                        LocalDate.of(2015, 4, 1),
                        LocalDate.of(2015, 4, 11),
                        LocalDate.of(2015, 4, 21),
                        LocalDate.of(2015, 5, 1),
                        LocalDate.of(2015, 5, 11),
                        LocalDate.of(2015, 5, 21));
        assertThat(spring.ticks(4)).containsExactly(LocalDate.of(2015, 4, 1), LocalDate.of(2015, 5, 1));
        DateScale years = new DateScale(LocalDate.of(2015, 1, 1), LocalDate.of(2017, 1, 1), 0, 100);
        assertThat(years.ticks(6)).hasSizeBetween(3, 6);
    }
}
