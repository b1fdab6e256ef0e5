package org.nestyear.app.service;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.nestyear.core.advice.Phrase;
import org.nestyear.core.advice.Quantity;
import org.nestyear.core.advice.Unit;

class WordingTest {
    private final Wording metric = new Wording(UnitSystem.METRIC, 2015);
    private final Wording us = new Wording(UnitSystem.US, 2015);

    /** Conversions by definition: °F = °C × 9/5 + 32, inch 25.4 mm, foot 0.3048 m, US quart 0.946352946 l. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            12      | CELSIUS            | 0 | 12 °C    | 54 °F
            -3.5    | CELSIUS            | 1 | −3.5 °C  | 25.7 °F
            -0.2    | CELSIUS            | 0 | 0 °C     | 32 °F
            5       | CELSIUS_DIFFERENCE | 0 | 5 °C     | 9 °F
            8       | MILLIMETRE         | 0 | 8 mm     | 5/16 in
            12.7    | MILLIMETRE         | 1 | 12.7 mm  | 1/2 in
            25.4    | MILLIMETRE         | 1 | 25.4 mm  | 1 in
            152     | MILLIMETRE         | 0 | 152 mm   | 6 in
            75      | MILLIMETRE         | 0 | 75 mm    | 3 in
            1       | MILLIMETRE         | 0 | 1 mm     | 0.04 in
            150     | METRE              | 0 | 150 m    | 492 ft
            1.5     | METRE              | 1 | 1.5 m    | 4.9 ft
            1       | LITRE              | 0 | 1 l      | 1.1 quarts
            1       | DAY                | 0 | 1 day    | 1 day
            3.2     | DAY                | 0 | 3 days   | 3 days
            5.66    | HOUR               | 1 | 5.7 hours | 5.7 hours
            1234567 | COUNT              | 0 | 1,234,567 | 1,234,567
            0.074   | SHARE              | 0 | 7 %      | 7 %
            0.004   | SHARE              | 0 | under 1 % | under 1 %
            0.996   | SHARE              | 0 | over 99 % | over 99 %
            1       | SHARE              | 0 | 100 %    | 100 %
            0       | SHARE              | 0 | 0 %      | 0 %
            0.12345 | NUMBER             | 3 | 0.123    | 0.123
            """)
    void quantitiesAreWrittenInTheKeepersUnits(double value, Unit unit, int decimals, String inMetric, String inUs) {
        Quantity quantity = new Quantity(value, unit, decimals);

        assertThat(metric.quantity(quantity)).isEqualTo(inMetric);
        assertThat(us.quantity(quantity)).isEqualTo(inUs);
    }

    @Test
    void datesNameTheirDayAndTheirYearOnlyWhenItIsAnother() {
        assertThat(metric.date(LocalDate.parse("2015-04-23"))).isEqualTo("Thu 23 April");
        assertThat(metric.date(LocalDate.parse("2016-02-29"))).isEqualTo("Mon 29 February 2016");
    }

    @Test
    void runsOfDaysNameTheMonthOnce() {
        LocalDate from = LocalDate.parse("2015-04-23");
        assertThat(metric.range(from, LocalDate.parse("2015-04-26"))).isEqualTo("Thu 23 to Sun 26 April");
        assertThat(metric.range(from, LocalDate.parse("2015-05-02"))).isEqualTo("Thu 23 April to Sat 2 May");
        assertThat(metric.range(from, from)).isEqualTo("Thu 23 April");
    }

    @Test
    void aPhraseIsFilledInOrderWithNestedOnes() {
        Phrase phrase = Phrase.of(
                "Put {} out between {} and {}{}.",
                Phrase.of("{} cocoons", Quantity.count(330)),
                LocalDate.parse("2015-04-10"),
                LocalDate.parse("2015-04-17"),
                "");

        assertThat(metric.phrase(phrase)).isEqualTo("Put 330 cocoons out between Fri 10 April and Fri 17 April.");
        assertThat(metric.headline(phrase))
                .isEqualTo("Put 330 cocoons out between Fri 10 April and Fri 17 April 2015.");
    }
}
