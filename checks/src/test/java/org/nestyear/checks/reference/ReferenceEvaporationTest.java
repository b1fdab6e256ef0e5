package org.nestyear.checks.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import de.siegmar.fastcsv.reader.NamedCsvRecord;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.nestyear.checks.Comparison;
import org.nestyear.checks.SharedData;
import org.nestyear.core.sun.ExtraterrestrialRadiation;
import org.nestyear.core.weather.ReferenceEvaporation;

/** Evaporation by Hargreaves against FAO Irrigation and Drainage Paper 56. */
@Tag("reference")
class ReferenceEvaporationTest {
    /** Example 20: Lyon in July, 26.6 and 14.8 °C, Ra 40.6 MJ/m²: 5.0 mm a day. */
    @Test
    void theBooksExample() {
        assertThat(ReferenceEvaporation.hargreavesMm(14.8, 26.6, 40.6)).isCloseTo(5.0, within(0.05));
    }

    /** Equation 52 in closed form for 104 places and days, through our own extraterrestrial radiation. */
    @Test
    void aGridOfPlacesAndDays() {
        Comparison comparison = new Comparison("Hargreaves ET0, mm a day", 1e-5);
        for (NamedCsvRecord row : SharedData.rows("reference/fao56/ra_hargreaves_grid.csv")) {
            double ra = ExtraterrestrialRadiation.dailyMjM2(
                    SharedData.number(row, "lat"), (int) SharedData.number(row, "jday"));
            comparison.add(
                    row.getField("lat") + " day " + row.getField("jday"),
                    ReferenceEvaporation.hargreavesMm(
                            SharedData.number(row, "tmin"), SharedData.number(row, "tmax"), ra),
                    SharedData.number(row, "hargreaves_eto_mm"));
        }
        comparison.check(104);
    }

    @Test
    void nonsenseIsRefused() {
        assertThat(ReferenceEvaporation.hargreavesMm(-40, -30, 10)).isZero();
        assertThatThrownBy(() -> ReferenceEvaporation.hargreavesMm(20, 10, 10))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> ReferenceEvaporation.hargreavesMm(10, 20, Double.NaN))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
