package org.nestyear.checks.leafcutter;

import static org.assertj.core.api.Assertions.assertThat;

import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.nestyear.checks.Comparison;
import org.nestyear.checks.SharedData;
import org.nestyear.core.leafcutter.Holding;
import org.nestyear.core.leafcutter.Holding.Verdict;
import org.nestyear.core.leafcutter.Stage;
import org.nestyear.core.leafcutter.Summer;
import org.nestyear.core.leafcutter.WinterLimits;
import org.nestyear.core.leafcutter.WinterLimits.Flag;

/** Cases of the reference table {@code megachile/worked_cases.csv}, each with its own source there. */
@Tag("reference")
class WorkedCasesTest {
    private static final Pattern NUMBER = Pattern.compile("\\d+(?:\\.\\d+)?");
    private static final Holding HOLDING = new Holding(Leafcutters.TABLE);
    private static final WinterLimits WINTER = new WinterLimits(Leafcutters.TABLE);
    private static final Summer SUMMER = Summer.of(Leafcutters.TABLE);

    private static NamedCsvRecord row(String id) {
        return SharedData.rows("megachile/worked_cases.csv").stream()
                .filter(row -> row.getField("id").equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static List<Double> expected(String id) {
        return numbers(row(id).getField("expected"));
    }

    private static List<Double> numbers(String text) {
        List<Double> numbers = new ArrayList<>();
        Matcher matcher = NUMBER.matcher(text);
        while (matcher.find()) {
            numbers.add(Double.valueOf(matcher.group()));
        }
        return numbers;
    }

    /** M04 to M06: egg to prepupa by base 15 °C and 116 degree-days (Whitfield &amp; Richards 1992), 7.7, 11.6 and 23.2 d. */
    @Test
    void daysFromEggToPrepupa() {
        Comparison days = new Comparison("egg to prepupa, days", 0.1);
        days.add("30 °C", SUMMER.daysToPrepupa(30), expected("M04").get(0));
        days.add("25 °C", SUMMER.daysToPrepupa(25), expected("M05").get(0));
        days.add("20 °C", SUMMER.daysToPrepupa(20), expected("M06").get(0));
        days.check(3);
        assertThat(SUMMER.daysToPrepupa(15)).isInfinite();
        assertThat(SUMMER.daysToPrepupa(3)).isInfinite();
    }

    /** M08: 73.3 % of young died at 18 °C (Whitfield &amp; Richards 1992). */
    @Test
    void coolSummersKillTheYoung() {
        assertThat(100 * Leafcutters.TABLE.value("egg_prepupa_cool_death"))
                .isEqualTo(expected("M08").get(0));
    }

    /** M16: pupae with coloured eyes, black pupae and ready adults bear 14 d at 12 or 18 °C (Yocum et al. 2010). */
    @ParameterizedTest
    @EnumSource(
            value = Stage.class,
            names = {"COLOURED_PUPA", "BLACK_PUPA", "READY_ADULT"})
    void mildHoldsCostNothing(Stage stage) {
        assertThat(row("M16").getField("input")).contains("14 d at 12 or 18 C");
        assertThat(HOLDING.judge(stage, 12, 14, 0)).isEqualTo(Verdict.SAFE);
        assertThat(HOLDING.judge(stage, 18, 14, 0)).isEqualTo(Verdict.SAFE);
        assertThat(HOLDING.judge(stage, 15, 14.5, 0)).isEqualTo(Verdict.TOO_LONG);
    }

    /** M17: constant cold below 12 °C for more than 7 d without a daily warm pulse is outside (Rinehart et al. 2011). */
    @Test
    void constantColdIsForAWeekAtMost() {
        assertThat(row("M17").getField("input")).contains("below 12 C for more than 7 d");
        assertThat(HOLDING.judge(Stage.BLACK_PUPA, 11.9, 7, 0)).isEqualTo(Verdict.COSTS);
        assertThat(HOLDING.judge(Stage.BLACK_PUPA, 11.9, 7.1, 0)).isEqualTo(Verdict.TOO_LONG);
        assertThat(HOLDING.judge(Stage.BLACK_PUPA, 6, 42, 1)).isEqualTo(Verdict.SAFE);
        assertThat(HOLDING.judge(Stage.BLACK_PUPA, 6, 43, 1)).isEqualTo(Verdict.TOO_LONG);
    }

    /** M18: more than 45 d at 18.3 °C or more, or more than 20 d at 25 °C or more (University of Idaho, fall management). */
    @ParameterizedTest
    @CsvSource({
        "45, 18.3, false",
        "46, 18.3, true",
        "20, 25, false",
        "21, 25, true",
        "21, 24.9, false",
        "90, 18.2, false"
    })
    void autumnWarmthIsFlagged(int days, double celsius, boolean flagged) {
        assertThat(row("M18").getField("input")).contains("45 d at >=18.3 C").contains("20 d at >=25 C");
        double[] hours = new double[24 * (days + 100)];
        Arrays.fill(hours, 4);
        Arrays.fill(hours, 0, 24 * days, celsius);

        assertThat(WINTER.flags(hours)).isEqualTo(flagged ? List.of(Flag.AUTUMN_TOO_WARM) : List.of());
    }

    /** M19: nests at 30 °C air reached 35.1, 37.2 and 30.6 °C in polystyrene, paper and wood (Peterson et al. 1994). */
    @Test
    void nestsWarmThemselves() {
        List<Double> published =
                numbers(row("M19").getField("topic") + row("M19").getField("input"));
        double air = Leafcutters.TABLE.value("nest_heat_air_c");
        Comparison nests = new Comparison("nest at 30 °C air, °C", 1e-9);
        nests.add("air", air, published.get(0));
        nests.add("polystyrene", air + Leafcutters.TABLE.value("polystyrene_excess_c"), published.get(1));
        nests.add("paper", air + Leafcutters.TABLE.value("paper_excess_c"), published.get(2));
        nests.add("wood", air + Leafcutters.TABLE.value("wood_excess_c"), published.get(3));
        nests.check(4);
    }

    /** M25: mean age at death in cages, from the open data of Szejner-Sigal et al. 2025 (CC0). */
    @Test
    void agesAtDeathAreThoseOfTheData() {
        double[] sums = new double[2];
        int[] counts = new int[2];
        double[] oldest = new double[2];
        for (NamedCsvRecord row : SharedData.rows("megachile/m_rotundata_lab_adult_age_at_death.csv")) {
            int sex = row.getField("sex").equals("f") ? 1 : 0;
            double age = SharedData.number(row, "age_at_death_d");
            sums[sex] += age;
            counts[sex]++;
            oldest[sex] = Math.max(oldest[sex], age);
        }
        assertThat(counts).containsExactly(107, 77);
        Comparison ages = new Comparison("age at death, days", 0.05);
        ages.add("males", Leafcutters.TABLE.value("lab_life_m_days"), sums[0] / counts[0]);
        ages.add("females", Leafcutters.TABLE.value("lab_life_f_days"), sums[1] / counts[1]);
        ages.check(2);
        assertThat(Leafcutters.TABLE.get("lab_life_m_days").high()).isEqualTo(oldest[0]);
        assertThat(Leafcutters.TABLE.get("lab_life_f_days").high()).isEqualTo(oldest[1]);
    }

    /** M26: 22.0 nesting days at a daily death of 0.04 and a cap of 52 d (parameters of Schmolke et al. 2023). */
    @Test
    void expectedNestingDays() {
        Comparison days = new Comparison("nesting days", 0.1);
        days.add("mean", SUMMER.expectedNestingDays(), expected("M26").get(0));
        days.check(1);
    }

    /** Stores: 2 to 5 °C asked for, watched below 0 °C, 10 to 15 °C for a short time (Krunic &amp; Hinks 1972; practice). */
    @Test
    void storesAreHeldAgainstTheirLimits() {
        double[] good = new double[24 * 200];
        Arrays.fill(good, 4);
        assertThat(WINTER.flags(good)).isEmpty();
        double[] frost = good.clone();
        frost[100] = -0.5;
        assertThat(WINTER.flags(frost)).containsExactly(Flag.BELOW_FREEZING);
        double[] mild = good.clone();
        Arrays.fill(mild, 0, 24 * 31, 15);
        assertThat(WINTER.flags(mild)).containsExactly(Flag.MILD_TOO_LONG);
        Arrays.fill(mild, 0, 24, 9);
        assertThat(WINTER.flags(mild)).isEmpty();
        assertThat(WINTER.storeLowC()).isLessThan(WINTER.storeHighC());
        assertThat(WINTER.evenDays()).isEqualTo(250);
    }
}
