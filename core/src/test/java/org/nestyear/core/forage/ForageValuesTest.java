package org.nestyear.core.forage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.nestyear.core.place.Region;
import org.nestyear.core.season.PlantStand;

/** The small values of flowers in reach, and what they refuse. */
class ForageValuesTest {
    private static final LocalDate MONDAY = LocalDate.of(2015, 5, 4);

    private static ForageWeek week(double cells, Band plants, double other) {
        return new ForageWeek(MONDAY, MONDAY.plusDays(6), cells, plants, other);
    }

    @Test
    void bloomRisesAndFallsInStraightLines() {
        BloomSpan span = new BloomSpan(MONDAY, MONDAY.plusDays(3), MONDAY.plusDays(12));
        double[] expected = {0, 0.25, 0.5, 0.75, 1, 0.9, 0.8};
        for (int d = 0; d < expected.length; d++) {
            assertThat(span.height(MONDAY.plusDays(d - 1L))).isCloseTo(expected[d], within(1e-12));
        }
        assertThat(span.height(MONDAY.plusDays(12))).isCloseTo(0.1, within(1e-12));
        assertThat(span.height(MONDAY.plusDays(13))).isZero();
    }

    @Test
    void aWeekStandsByItsBand() {
        assertThat(week(10, new Band(10, 20, 30), 0).fed()).isEqualTo(Fed.ENOUGH);
        assertThat(week(10, new Band(9, 20, 30), 0).fed()).isEqualTo(Fed.LIKELY_ENOUGH);
        assertThat(week(10, new Band(1, 9, 30), 0).fed()).isEqualTo(Fed.LIKELY_SHORT);
        assertThat(week(10, new Band(1, 2, 9), 0).fed()).isEqualTo(Fed.SHORT);
        assertThat(week(10, new Band(1, 2, 9), 8).fed()).isEqualTo(Fed.LIKELY_ENOUGH);
        assertThat(week(10, new Band(1, 2, 9), 3).lacking()).isCloseTo(5, within(1e-12));
        assertThat(week(10, new Band(1, 20, 30), 0).lacking()).isZero();
    }

    @Test
    void whatMakesNoSenseIsRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> new Band(2, 1, 3));
        assertThatIllegalArgumentException().isThrownBy(() -> new Band(0, Double.NaN, 3));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> week(0, Band.NONE, 0))
                .withMessageContaining("above 0");
        assertThatIllegalArgumentException().isThrownBy(() -> week(Double.NaN, Band.NONE, 0));
        assertThatIllegalArgumentException().isThrownBy(() -> new BloomSpan(MONDAY, MONDAY.minusDays(1), MONDAY));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new WordDates(MonthDay.of(5, 1), MonthDay.of(4, 1), MonthDay.of(6, 1), 1));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ToldLine.even(List.of(), null, MONDAY, MONDAY.minusDays(1), 1))
                .withMessageContaining("days in order");
        assertThatIllegalArgumentException().isThrownBy(() -> BloomWord.ofWord("midspring"));
        assertThatIllegalArgumentException().isThrownBy(() -> Region.ofWord("atlantis"));
        assertThatIllegalArgumentException().isThrownBy(() -> new PlantStand(null, -1.0, null, false));
        assertThatIllegalArgumentException().isThrownBy(() -> new PlantStand(null, null, 0.0, false));
    }

    @Test
    void wordsComeBackAsTheyWent() {
        for (BloomWord word : BloomWord.values()) {
            assertThat(BloomWord.ofWord(word.word())).isEqualTo(word);
        }
        for (Region region : Region.values()) {
            assertThat(Region.ofWord(region.word())).isEqualTo(region);
        }
        assertThat(BloomWord.MID_SPRING.word()).isEqualTo("mid spring");
        assertThat(Region.NORTH_WEST_EUROPE.word()).isEqualTo("north-west-europe");
    }

    @Test
    void theLineEndsWhenFewStillNest() {
        double[] nesting = {0, 5, 10, 4, 2, 1.9, 0};
        FlowerLine line = new FlowerLine(MONDAY, nesting, nesting, nesting, List.of());
        assertThat(line.end(0.2)).isEqualTo(5);
        assertThat(line.end(0)).isEqualTo(7);
    }
}
