package org.nestyear.core.weather;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The readings of a logging thermometer in a box, room or fridge, in order of time. Between two readings the temperature
 * is taken to lie on a straight line, over a gap too: callers look at {@link #gaps} first and say what was bridged.
 *
 * <p>Immutable; may be shared by threads.
 */
public final class LoggedTemperatures {
    private static final double SECONDS_PER_HOUR = 60.0 * 60.0;
    /** A numerical choice: readings further apart than this are a gap, unless the logger never reads more often. */
    private static final double LONGEST_STEP_HOURS = 3;
    /** A numerical choice: how many times its usual step a slow logger may pause before that is a gap. */
    private static final double LONGEST_STEPS = 1.5;

    private final List<LoggedTemperature> readings;

    /**
     * @throws IllegalArgumentException if there are fewer than two readings, or one is not later than the one before
     */
    public LoggedTemperatures(List<LoggedTemperature> readings) {
        if (readings.size() < 2) {
            throw new IllegalArgumentException("a log needs two readings or more, got " + readings.size());
        }
        for (int i = 1; i < readings.size(); i++) {
            if (!readings.get(i).time().isAfter(readings.get(i - 1).time())) {
                throw new IllegalArgumentException(
                        "the reading at " + readings.get(i).time() + " does not come after "
                                + readings.get(i - 1).time());
            }
        }
        this.readings = List.copyOf(readings);
    }

    /** Every reading, at least two, in order of time. */
    public List<LoggedTemperature> readings() {
        return readings;
    }

    /** Time of the first reading. */
    public LocalDateTime first() {
        return readings.get(0).time();
    }

    /** Time of the last reading. */
    public LocalDateTime last() {
        return readings.get(readings.size() - 1).time();
    }

    /** Hours between one reading and the next, as they mostly are (their lower median). */
    public double usualStepHours() {
        double[] steps = new double[readings.size() - 1];
        for (int i = 0; i < steps.length; i++) {
            steps[i] = hoursUntil(readings.get(i + 1).time())
                    - hoursUntil(readings.get(i).time());
        }
        Arrays.sort(steps);
        return steps[(steps.length - 1) / 2];
    }

    /**
     * Times between two readings that are longer than three hours and than one and a half times the usual step, in order.
     */
    public List<LogGap> gaps() {
        double longest = Math.max(LONGEST_STEP_HOURS, LONGEST_STEPS * usualStepHours());
        List<LogGap> gaps = new ArrayList<>();
        for (int i = 1; i < readings.size(); i++) {
            LogGap step = new LogGap(readings.get(i - 1).time(), readings.get(i).time());
            if (step.hours() > longest) {
                gaps.add(step);
            }
        }
        return gaps;
    }

    /**
     * Mean temperature of each whole hour counted from the first reading.
     *
     * @return °C; value h is the mean from h to h + 1 hours after {@link #first}; empty for a log under an hour
     */
    public double[] hourlyC() {
        int hours = (int) Math.floor(hoursUntil(last()));
        double[] means = new double[hours];
        int next = 1;
        for (int h = 0; h < hours; h++) {
            double at = h;
            double sum = 0;
            while (at < h + 1) {
                while (hoursUntil(readings.get(next).time()) <= at) {
                    next++;
                }
                double until = Math.min(h + 1, hoursUntil(readings.get(next).time()));
                sum += (until - at) * between(next, (at + until) / 2);
                at = until;
            }
            means[h] = sum;
        }
        return means;
    }

    /** Temperature on the line that ends at this reading. */
    private double between(int next, double hour) {
        LoggedTemperature before = readings.get(next - 1);
        LoggedTemperature after = readings.get(next);
        double from = hoursUntil(before.time());
        double share = (hour - from) / (hoursUntil(after.time()) - from);
        return before.celsius() + share * (after.celsius() - before.celsius());
    }

    private double hoursUntil(LocalDateTime time) {
        return Duration.between(first(), time).toSeconds() / SECONDS_PER_HOUR;
    }
}
