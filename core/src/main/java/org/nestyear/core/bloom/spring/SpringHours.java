package org.nestyear.core.bloom.spring;

import org.nestyear.core.source.ParameterReader;

/**
 * The spring index's own day length and its own growing degree hours of a day, in °F·h. Both are cruder than
 * {@link org.nestyear.core.weather.HourlyTemperatures}; the index is only comparable with published dates when it uses
 * them.
 */
final class SpringHours {
    /** Numerical: hours of a day by which the index's own sine is longer than the day, as in Linvill (1990). */
    private static final int SINE_EXTENSION = 4;
    /** A numerical bound: the shortest and the longest night in hours that the logarithm of the index can take. */
    private static final int LONGEST = 23;
    /** Numerical: the index's year begins on 1 March, the sixty-first day of a leap year. */
    private static final int BEFORE_MARCH = 60;
    /** Numerical: the days from 1 March to the end of the year. */
    private static final int MARCH_TO_DECEMBER = 306;

    private final double baseF;
    private final double latitudeLimit;
    private final double lowMean;
    private final double lowSlope;
    private final double highMean;
    private final double highConstant;
    private final double highSlope;
    private final double angle;
    private final double phase;
    private final double nudgeF;

    SpringHours(ParameterReader parameters) {
        baseF = parameters.value("spring_base_f");
        latitudeLimit = parameters.value("spring_light_latitude");
        lowMean = parameters.value("spring_light_low_mean");
        lowSlope = parameters.value("spring_light_low_slope");
        highMean = parameters.value("spring_light_high_mean");
        highConstant = parameters.value("spring_light_high_constant");
        highSlope = parameters.value("spring_light_high_slope");
        angle = parameters.value("spring_light_angle");
        phase = parameters.value("spring_light_phase");
        nudgeF = parameters.value("spring_nudge_f");
    }

    /** Hours of light. */
    double dayLength(int dayOfYear, double latitudeDeg) {
        double count = dayOfYear <= BEFORE_MARCH ? dayOfYear + MARCH_TO_DECEMBER : dayOfYear - BEFORE_MARCH;
        double tangent = Math.tan(Math.toRadians(latitudeDeg));
        double wave = Math.cos(angle * count - phase);
        double hours = latitudeDeg < latitudeLimit
                ? lowMean + lowSlope * tangent * wave
                : highMean + (highConstant + highSlope * tangent * tangent) * wave;
        return Math.max(1, Math.min(LONGEST, hours));
    }

    /** Growing degree hours of a day, °F·h. */
    double growing(double lowF, double highF, double dayLength) {
        double low = lowF == 0 ? nudgeF : lowF;
        double high = highF == low ? highF + nudgeF : highF;
        double sum = Math.max(0, low - baseF);
        int light = (int) dayLength;
        double span = dayLength + SINE_EXTENSION;
        for (int h = 1; h <= light; h++) {
            sum += Math.max(0, low + (high - low) * Math.sin(Math.PI * h / span) - baseF);
        }
        double dusk = low + (high - low) * Math.sin(Math.PI * dayLength / span);
        double scale = (dusk - low) / Math.log(24 - dayLength);
        for (int h = 1; h <= LONGEST - light; h++) {
            sum += Math.max(0, dusk - scale * Math.log(h) - baseF);
        }
        return sum;
    }
}
