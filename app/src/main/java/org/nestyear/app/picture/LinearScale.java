package org.nestyear.app.picture;

import java.util.ArrayList;
import java.util.List;

/**
 * Puts numbers on a straight line of the picture.
 *
 * @param low number at {@code start}
 * @param high number at {@code end}, above {@code low}
 * @param start picture coordinate of {@code low}
 * @param end picture coordinate of {@code high}; below {@code start} for an axis that points up
 */
public record LinearScale(double low, double high, double start, double end) {
    public LinearScale {
        if (!(high > low) || !Double.isFinite(high - low) || !Double.isFinite(end - start)) {
            throw new IllegalArgumentException(
                    "a scale needs finite numbers with low below high, got " + low + " to " + high);
        }
    }

    /** Picture coordinate of a number; numbers outside the scale fall outside the line. */
    public double at(double number) {
        return start + (number - low) / (high - low) * (end - start);
    }

    /** Round numbers on the scale, 1, 2 or 5 times a power of ten apart, at most {@code most} steps, in rising order. */
    public List<Double> ticks(int most) {
        double step = roundStep((high - low) / most);
        List<Double> ticks = new ArrayList<>();
        long first = (long) Math.ceil(low / step - 1e-9);
        for (long i = first; i * step <= high + step * 1e-9; i++) {
            ticks.add(i * step);
        }
        return ticks;
    }

    private static double roundStep(double least) {
        double power = Math.pow(10, Math.floor(Math.log10(least)));
        for (double factor : new double[] {1, 2, 5}) {
            if (factor * power >= least * (1 - 1e-9)) {
                return factor * power;
            }
        }
        return 10 * power;
    }
}
