package org.nestyear.core.emergence;

/**
 * What the cocoons have behind them when their outdoor clock starts.
 *
 * @param clockStart day from which outdoor sums count
 * @param readiness readiness days gathered before that day
 * @param readinessPerDay readiness gained a day in the store, above 0
 * @param warmthPerDay warmth gained a day in the store by a bee that is ready, °C²·d
 * @param releaseDay day they are put out, not before {@code clockStart}; whoever is out earlier is lost in the store
 */
public record Storage(int clockStart, double readiness, double readinessPerDay, double warmthPerDay, int releaseDay) {

    /** Cocoons kept at one temperature until they are put out. */
    public static Storage cold(EmergenceSettings settings, double celsius, double days, int releaseDay) {
        double rate = settings.readinessPerDay(celsius);
        return new Storage(releaseDay, rate * days, rate, settings.warmthPerDay(celsius), releaseDay);
    }

    /** Cocoons at air temperature since {@code coldStart}. */
    public static Storage outdoors(int coldStart, int releaseDay) {
        return new Storage(coldStart, 0, 1, 0, Math.max(coldStart, releaseDay));
    }
}
