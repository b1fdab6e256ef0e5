package org.nestyear.core.bloom.hourly;

import org.nestyear.core.source.ParameterReader;

/**
 * Chill portions of the dynamic model (Fishman, Erez &amp; Couvillon 1987): cold makes an intermediate product, warmth
 * unmakes it, and once it reaches 1 a share of it that depends on temperature is fixed for good as chill.
 *
 * @param formEnergyK E₀, activation energy of forming over the gas constant, K
 * @param breakEnergyK E₁, the same for breaking, K
 * @param formRate A₀, 1/h
 * @param breakRate A₁, 1/h
 * @param slope steepness of the share that is fixed
 * @param middleK temperature at which half is fixed, K
 * @param zeroK what the model's authors took 0 °C to be, K
 */
public record ChillPortions(
        double formEnergyK,
        double breakEnergyK,
        double formRate,
        double breakRate,
        double slope,
        double middleK,
        double zeroK)
        implements HourlySum {
    public static ChillPortions of(ParameterReader parameters) {
        return new ChillPortions(
                parameters.value("dynamic_e0_k"),
                parameters.value("dynamic_e1_k"),
                parameters.value("dynamic_a0"),
                parameters.value("dynamic_a1"),
                parameters.value("dynamic_slope"),
                parameters.value("dynamic_middle_k"),
                parameters.value("dynamic_zero_k"));
    }

    @Override
    public double[] running(double[] tempC) {
        double[] sums = new double[tempC.length];
        double product = 0;
        double rest = 0;
        double sum = 0;
        for (int h = 0; h < tempC.length; h++) {
            double kelvin = tempC[h] + zeroK;
            double level = formRate / breakRate * Math.exp((breakEnergyK - formEnergyK) / kelvin);
            double kept = Math.exp(-breakRate * Math.exp(-breakEnergyK / kelvin));
            product = level - (level - rest) * kept;
            rest = product;
            if (product >= 1) {
                double fixed = product * fixedShare(kelvin);
                sum += fixed;
                rest = product - fixed;
            }
            sums[h] = sum;
        }
        return sums;
    }

    private double fixedShare(double kelvin) {
        double odds = Math.exp(slope * middleK * (kelvin - middleK) / kelvin);
        return odds / (1 + odds);
    }
}
