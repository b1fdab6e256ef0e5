package org.nestyear.core.bloom.hourly;

import org.nestyear.core.source.ParameterReader;

/**
 * Hours between two temperatures, both included (Weinberger 1950). Other authors leave out the lower limit.
 *
 * @param lowC lowest temperature that counts, °C
 * @param highC highest temperature that counts, °C
 */
public record ChillingHours(double lowC, double highC) implements HourlySum {
    public static ChillingHours of(ParameterReader parameters) {
        return new ChillingHours(parameters.value("chilling_low_c"), parameters.value("chilling_high_c"));
    }

    @Override
    public double[] running(double[] tempC) {
        double[] sums = new double[tempC.length];
        double sum = 0;
        for (int h = 0; h < tempC.length; h++) {
            if (tempC[h] >= lowC && tempC[h] <= highC) {
                sum++;
            }
            sums[h] = sum;
        }
        return sums;
    }
}
