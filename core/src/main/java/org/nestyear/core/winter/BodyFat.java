package org.nestyear.core.winter;

import org.nestyear.core.source.ParameterReader;

/**
 * What wintering adults spend: the weight of a cocoon falls by a share a day that grows exponentially with temperature
 * (fitted to weekly weighings of Möllmann et al. 2025). Weight stands for fat, which was not measured.
 *
 * @param zeroPercent loss at 0 °C, per cent of the first weight a day
 * @param slope growth of the loss, 1/°C
 * @param bearablePercent loss that bees were seen to bear without more deaths, per cent of the first weight
 */
public record BodyFat(double zeroPercent, double slope, double bearablePercent) {
    private static final double HOURS = 24;

    public static BodyFat of(ParameterReader parameters) {
        return new BodyFat(
                parameters.value("weight_loss_zero_percent"),
                parameters.value("weight_loss_slope"),
                parameters.value("weight_loss_bearable_percent"));
    }

    /** Loss at a temperature, per cent of the first weight a day. */
    public double percentPerDay(double celsius) {
        return zeroPercent * Math.exp(slope * celsius);
    }

    /**
     * Loss over a run of hours, per cent of the first weight.
     *
     * @param hourlyC temperature of the cocoons, °C
     */
    public double percentOver(double[] hourlyC) {
        double sum = 0;
        for (double celsius : hourlyC) {
            sum += percentPerDay(celsius) / HOURS;
        }
        return sum;
    }

    /** Days until the bearable loss is reached at a temperature; 0 if it is. */
    public double daysLeft(double lostPercent, double celsius) {
        return Math.max(0, bearablePercent - lostPercent) / percentPerDay(celsius);
    }
}
