package org.nestyear.core.bloom.hourly;

/** Something that hours of a given air temperature add up to: chill or heat. */
public interface HourlySum {
    /**
     * The sum after each hour.
     *
     * @param tempC air temperature of consecutive hours, °C, all finite
     * @return as many sums, index by hour
     */
    double[] running(double[] tempC);
}
