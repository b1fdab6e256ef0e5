package org.nestyear.core.bloom.fit;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * The weather that leads to one bloom, made ready for every model. Days are numbered from midwinter: day 1 is 1 January
 * in the north and 1 July in the south, day 0 the one before it. Made by {@link YearCourses}.
 */
public final class YearCourse {
    private final int firstDay;
    private final double[] meanC;
    private final double[] hoursC;
    private final double standardC;
    private final double[] growing;
    private final int chillDay;
    private final double[] portions;
    private final OptionalInt springBloom;

    /**
     * @param firstDay number of the first day held
     * @param meanC middle of minimum and maximum of each day, °C
     * @param hoursC temperature of each hour, °C, 24 a day
     * @param standardC temperature at which a standard day lasts a day, °C
     * @param growing growing degree hours after each day, °C·h
     * @param chillDay number of the day from which chill is counted
     * @param portions chill portions after each day from there on, empty when the weather begins later
     * @param springBloom bloom by the spring index, where it can be computed
     */
    YearCourse(
            int firstDay,
            double[] meanC,
            double[] hoursC,
            double standardC,
            double[] growing,
            int chillDay,
            double[] portions,
            OptionalInt springBloom) {
        this.firstDay = firstDay;
        this.meanC = meanC;
        this.hoursC = hoursC;
        this.standardC = standardC;
        this.growing = growing;
        this.chillDay = chillDay;
        this.portions = portions;
        this.springBloom = springBloom;
    }

    /** Number of the first day held. */
    public int firstDay() {
        return firstDay;
    }

    /** Number of the last day held. */
    public int lastDay() {
        return firstDay + meanC.length - 1;
    }

    /** True when chill could be counted from the beginning of its season. */
    public boolean hasChill() {
        return portions.length > 0;
    }

    /** Day of bloom by the spring index, where it can be computed. */
    public OptionalInt springBloom() {
        return springBloom;
    }

    /** Degree-days above a base from a day on; empty when the weather begins after that day. */
    Optional<RunningSum> degreeDays(int startDay, double baseC) {
        if (startDay < firstDay || startDay > lastDay()) {
            return Optional.empty();
        }
        double[] after = new double[lastDay() - startDay + 1];
        double sum = 0;
        for (int i = 0; i < after.length; i++) {
            sum += Math.max(0, meanC[startDay - firstDay + i] - baseC);
            after[i] = sum;
        }
        return Optional.of(new RunningSum(startDay, after));
    }

    /** Standard days from a day on; empty when the weather begins after that day. */
    Optional<RunningSum> standardDays(int startDay, double slope) {
        if (startDay < firstDay || startDay > lastDay()) {
            return Optional.empty();
        }
        double[] after = new double[lastDay() - startDay + 1];
        double sum = 0;
        for (int h = 24 * (startDay - firstDay); h < hoursC.length; h++) {
            sum += Math.exp(slope * (hoursC[h] - standardC)) / 24;
            after[h / 24 - (startDay - firstDay)] = sum;
        }
        return Optional.of(new RunningSum(startDay, after));
    }

    /** Growing degree hours from the day after the chill requirement is met; empty when it is not met in time. */
    Optional<RunningSum> heatAfterChill(double requirement) {
        int met = 0;
        while (met < portions.length && portions[met] < requirement) {
            met++;
        }
        int startDay = chillDay + met + 1;
        if (met >= portions.length || startDay > lastDay()) {
            return Optional.empty();
        }
        int start = startDay - firstDay;
        double before = growing[start - 1];
        double[] after = new double[growing.length - start];
        for (int i = 0; i < after.length; i++) {
            after[i] = growing[start + i] - before;
        }
        return Optional.of(new RunningSum(startDay, after));
    }

    /** The spring index's day as a number. */
    OptionalDouble springDay() {
        return springBloom.isPresent() ? OptionalDouble.of(springBloom.getAsInt()) : OptionalDouble.empty();
    }
}
