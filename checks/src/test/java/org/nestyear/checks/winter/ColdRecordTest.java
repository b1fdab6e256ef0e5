package org.nestyear.checks.winter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.nestyear.checks.Comparison;
import org.nestyear.checks.SharedData;
import org.nestyear.core.source.ParameterTable;
import org.nestyear.core.species.Sex;
import org.nestyear.core.winter.ColdRecord;
import org.nestyear.data.CatalogueFiles;

class ColdRecordTest {
    private static final ParameterTable TABLE =
            CatalogueFiles.load().find("Osmia bicornis").orElseThrow().parameters();
    private static final ColdRecord COLD = new ColdRecord(TABLE);

    /**
     * Shares that never came out at two field sites of 2015, of 480 females and 720 males each (Ruddle et al. 2018).
     * Tolerance 2 points: the two sites differ by 1.3.
     */
    @Test
    @Tag("reference")
    void wellWinteredBeesComeOutAsInTheField() {
        Comparison shares = new Comparison("share never out, %", 2);
        for (String study : List.of("S15-01802", "S15-01803")) {
            double females = 0;
            double males = 0;
            for (NamedCsvRecord row : SharedData.rows("osmia/field-2015-bicornis/emergence_2015_summary.csv")) {
                if (row.getField("study").equals(study)) {
                    females += SharedData.number(row, "females") / SharedData.number(row, "females_placed");
                    males += SharedData.number(row, "males") / SharedData.number(row, "males_placed");
                }
            }
            shares.add(study + " females", 100 * COLD.shareNotOut(Sex.FEMALE, 150), 100 * (1 - females));
            shares.add(study + " males", 100 * COLD.shareNotOut(Sex.MALE, 150), 100 * (1 - males));
        }
        shares.check(4);
    }

    /** O. cornuta: few emerge after less than 30 d of cold, 90 to 150 d is best (Bosch &amp; Kemp 2004, abstract). */
    @Test
    @Tag("reference")
    void fewComeOutAfterAMonthAndMostAfterThree() {
        for (Sex sex : Sex.values()) {
            assertThat(COLD.shareNotOut(sex, 20)).isGreaterThanOrEqualTo(0.75);
            assertThat(COLD.shareNotOut(sex, 30)).isGreaterThanOrEqualTo(0.75);
            assertThat(COLD.shareNotOut(sex, 90)).isEqualTo(COLD.shareNotOut(sex, 150));
            assertThat(COLD.shareNotOut(sex, 90)).isLessThan(0.15);
        }
    }

    @Test
    @Tag("regression")
    void lessColdNeverLetsMoreOut() {
        for (Sex sex : Sex.values()) {
            double last = 1;
            for (double days = 0; days <= 200; days++) {
                double shut = COLD.shareNotOut(sex, days);
                assertThat(shut).isBetween(0.0, last);
                last = shut;
            }
            // Half way between 30 and 90 days, half way between the two shares.
            assertThat(COLD.shareNotOut(sex, 60))
                    .isCloseTo((COLD.shareNotOut(sex, 30) + COLD.shareNotOut(sex, 90)) / 2, within(1e-12));
        }
    }

    /** Beyond 180 d every day costs a hundredth of the settling females (assumed); before, none. */
    @ParameterizedTest
    @Tag("regression")
    @ValueSource(doubles = {0, 90, 180})
    void freshStockIsFit(double days) {
        assertThat(COLD.shareFit(days)).isEqualTo(1);
        assertThat(COLD.shareFit(181)).isCloseTo(0.99, within(1e-12));
        assertThat(COLD.shareFit(1000)).isZero();
    }

    /** Days whose mean lies below the limit of 10 °C, counted over what is there. */
    @Test
    @Tag("regression")
    void coldDaysAreCounted() {
        double[] mean = {-3, 4, 9.9, 10, 12, 5};
        assertThat(ColdRecord.chillDaysBefore(mean, TABLE.value("chill_limit_c")))
                .containsExactly(0, 1, 2, 3, 3, 3, 4);
    }
}
