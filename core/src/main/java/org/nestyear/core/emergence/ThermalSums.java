package org.nestyear.core.emergence;

/** Running sums of readiness and warmth over a run of days, for one sex: value i is the sum at the start of day i. */
public final class ThermalSums {
    private static final int HOURS = 24;

    private final double[] readiness;
    private final double[] warmth;

    private ThermalSums(double[] readiness, double[] warmth) {
        this.readiness = readiness;
        this.warmth = warmth;
    }

    /**
     * Sums over hourly temperatures.
     *
     * @param hourlyC cocoon temperature, °C, 24 values a day
     */
    public static ThermalSums ofHours(EmergenceSettings settings, double[] hourlyC) {
        int days = hourlyC.length / HOURS;
        double[] readiness = new double[days + 1];
        for (int d = 0; d < days; d++) {
            double sum = 0;
            for (int h = d * HOURS; h < (d + 1) * HOURS; h++) {
                sum += settings.readinessPerDay(hourlyC[h]);
            }
            readiness[d + 1] = readiness[d] + sum / HOURS;
        }
        return new ThermalSums(readiness, warmth(settings, hourlyC));
    }

    /** Sums of the other sex over the same hours; what both share is not worked out again. */
    public ThermalSums ofOtherSex(EmergenceSettings own, EmergenceSettings other, double[] hourlyC) {
        boolean same =
                own.slope() == other.slope() && own.referenceC() == other.referenceC() && own.capC() == other.capC();
        return same ? new ThermalSums(readiness, warmth(other, hourlyC)) : ofHours(other, hourlyC);
    }

    private static double[] warmth(EmergenceSettings settings, double[] hourlyC) {
        int days = hourlyC.length / HOURS;
        double[] warmth = new double[days + 1];
        for (int d = 0; d < days; d++) {
            double sum = 0;
            for (int h = d * HOURS; h < (d + 1) * HOURS; h++) {
                sum += settings.warmthPerDay(hourlyC[h]);
            }
            warmth[d + 1] = warmth[d] + sum / HOURS;
        }
        return warmth;
    }

    /** Sums over {@code days} days at one temperature. */
    public static ThermalSums constant(EmergenceSettings settings, double celsius, int days) {
        double[] readiness = new double[days + 1];
        double[] warmth = new double[days + 1];
        for (int d = 1; d <= days; d++) {
            readiness[d] = d * settings.readinessPerDay(celsius);
            warmth[d] = d * settings.warmthPerDay(celsius);
        }
        return new ThermalSums(readiness, warmth);
    }

    /** Days summed over. */
    public int days() {
        return readiness.length - 1;
    }

    /** Readiness days gathered before day {@code day} begins. */
    public double readinessAt(int day) {
        return readiness[day];
    }

    /** Warmth gathered before day {@code day} begins, °C²·d. */
    public double warmthAt(int day) {
        return warmth[day];
    }

    /** The day within which readiness reaches {@code sum}, searching from {@code from}; {@code days()} if never. */
    int dayOfReadiness(double sum, int from) {
        return search(readiness, sum, from);
    }

    /** The day within which warmth reaches {@code sum}, searching from {@code from}; {@code days()} if never. */
    int dayOfWarmth(double sum, int from) {
        return search(warmth, sum, from);
    }

    private static int search(double[] sums, double sum, int from) {
        int last = sums.length - 1;
        int day = from;
        while (day < last && sums[day + 1] < sum) {
            day++;
        }
        return day;
    }

    /** The part of day {@code day} at which the readiness sum is reached, 0 to 1. */
    double partOfReadiness(double sum, int day) {
        return part(readiness, sum, day);
    }

    /** The part of day {@code day} at which the warmth sum is reached, 0 to 1. */
    double partOfWarmth(double sum, int day) {
        return part(warmth, sum, day);
    }

    private static double part(double[] sums, double sum, int day) {
        double gain = sums[day + 1] - sums[day];
        return gain > 0 ? Math.max(0, (sum - sums[day]) / gain) : 0;
    }
}
