package org.nestyear.checks.reference;

import static org.assertj.core.api.Assertions.assertThat;

import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.nestyear.checks.Comparison;
import org.nestyear.checks.SharedData;
import org.nestyear.core.sun.ExtraterrestrialRadiation;
import org.nestyear.core.sun.StandardPressure;
import org.nestyear.core.weather.SolarRadiation;

/** Allen, Pereira, Raes and Smith (1998), FAO Irrigation and Drainage Paper 56. */
class Fao56Test {
    /**
     * Printed answers of the worked examples, as they stand in reference/fao56/worked_examples.csv: example 2 and 4
     * pressure at 1800 and 1200 m, 81.8 and 87.9 kPa; example 8 Ra at 20° S on 3 September, 32.2 MJ/m²; example 15 Rs
     * from Ra 40.6, 26.6 and 14.8 °C with kRs .16, 22.3 MJ/m². Tolerance: half of the last printed digit.
     */
    @Test
    void agreesWithTheWorkedExamples() {
        Comparison printed = new Comparison("FAO-56 examples, kPa or MJ/m²", 0.05);
        for (NamedCsvRecord row : SharedData.rows("reference/fao56/worked_examples.csv")) {
            String example = row.getField("example") + " " + row.getField("quantity");
            double expected = SharedData.number(row, "published");
            switch (example) {
                case "ex2 pressure" -> printed.add(example, StandardPressure.hPa(1800) / 10, expected);
                case "ex4 pressure" -> printed.add(example, StandardPressure.hPa(1200) / 10, expected);
                case "ex8 Ra" -> printed.add(example, ExtraterrestrialRadiation.dailyMjM2(-20, 246), expected);
                case "ex15 Rs_hargreaves_krs0.16" ->
                    printed.add(example, SolarRadiation.fromTemperatureRangeMjM2(14.8, 26.6, 40.6, 0.16), expected);
                default -> {
                    // Quantities this project does not compute: evapotranspiration, vapour pressure, long-wave light.
                }
            }
        }
        printed.check(4);
    }

    /**
     * reference/fao56/ra_hargreaves_grid.csv: equations 21 to 25 in closed form by an independent program, 8 decimals.
     */
    @Test
    void dailyRadiationAgreesWithTheGrid() {
        Comparison daily = new Comparison("extraterrestrial radiation, MJ/m²", 1e-6);
        for (NamedCsvRecord row : SharedData.rows("reference/fao56/ra_hargreaves_grid.csv")) {
            daily.add(
                    "latitude " + row.getField("lat") + " day " + row.getField("jday"),
                    ExtraterrestrialRadiation.dailyMjM2(
                            SharedData.number(row, "lat"), Integer.parseInt(row.getField("jday"))),
                    SharedData.number(row, "Ra_mj"));
        }
        daily.check(104);
    }

    /**
     * Against numerical integration of the cosine of the zenith angle over each hour, with the declination of FAO-56
     * equation 24 written out again here. One step is 3.6 s, so the trapezoid rule errs by far less than 1e-5.
     */
    @Test
    void hourlySharesAgreeWithNumericalIntegration() {
        Comparison shares = new Comparison("share of an hour", 1e-5);
        for (double latitude : new double[] {-60, -33.5, 0, 25, 50.6, 66, 70, 90}) {
            for (int day : new int[] {1, 46, 80, 135, 172, 266, 319, 355}) {
                double[] expected = integratedShares(latitude, day);
                double[] computed = ExtraterrestrialRadiation.hourlyShares(latitude, day);
                assertThat(computed).hasSize(24);
                for (int hour = 0; hour < 24; hour++) {
                    shares.add(
                            "latitude " + latitude + " day " + day + " hour " + hour, computed[hour], expected[hour]);
                }
            }
        }
        shares.check(8 * 8 * 24);
    }

    @Test
    void hourlySharesSumToOneOrAreAllZero() {
        int dark = 0;
        for (int latitude = -90; latitude <= 90; latitude += 5) {
            for (int day = 1; day <= 366; day += 5) {
                double sum = Arrays.stream(ExtraterrestrialRadiation.hourlyShares(latitude, day))
                        .sum();
                if (ExtraterrestrialRadiation.dailyMjM2(latitude, day) < 1e-9) {
                    dark++;
                    assertThat(sum).isEqualTo(0);
                } else {
                    assertThat(sum).as("latitude %s day %s", latitude, day).isBetween(1 - 1e-9, 1 + 1e-9);
                }
            }
        }
        assertThat(dark).as("polar nights met").isPositive();
    }

    private static double[] integratedShares(double latitudeDeg, int day) {
        double latitude = Math.toRadians(latitudeDeg);
        double declination = 0.409 * Math.sin(2 * Math.PI / 365 * day - 1.39);
        int steps = 1000;
        double[] energy = new double[24];
        for (int i = 0; i < 24 * steps; i++) {
            double left = cosine(latitude, declination, (double) i / steps);
            double right = cosine(latitude, declination, (double) (i + 1) / steps);
            energy[i / steps] += (left + right) / 2;
        }
        double whole = Arrays.stream(energy).sum();
        return Arrays.stream(energy).map(e -> whole > 0 ? e / whole : 0).toArray();
    }

    private static double cosine(double latitude, double declination, double solarHour) {
        double hourAngle = Math.PI / 12 * (solarHour - 12);
        return Math.max(
                0,
                Math.sin(latitude) * Math.sin(declination)
                        + Math.cos(latitude) * Math.cos(declination) * Math.cos(hourAngle));
    }
}
