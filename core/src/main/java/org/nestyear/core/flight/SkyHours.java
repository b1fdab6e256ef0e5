package org.nestyear.core.flight;

import java.time.LocalDate;
import org.nestyear.core.sun.ExtraterrestrialRadiation;

/** Radiation above the air by solar hour for a run of days at one latitude: what weather can only take from. */
public final class SkyHours {
    private static final int HOURS = 24;
    /** By definition of the units; numerical. */
    private static final double JOULE_PER_MEGAJOULE = 1e6;
    /** By definition of the hour; numerical. */
    private static final double SECONDS_PER_HOUR = 3600;

    private final double[] wm2;

    private SkyHours(double[] wm2) {
        this.wm2 = wm2;
    }

    /** The sky over {@code days} days from {@code first}, at degrees north. */
    public static SkyHours of(LocalDate first, int days, double latitudeDeg) {
        double[] wm2 = new double[days * HOURS];
        for (int d = 0; d < days; d++) {
            int dayOfYear = first.plusDays(d).getDayOfYear();
            double day = ExtraterrestrialRadiation.dailyMjM2(latitudeDeg, dayOfYear) * JOULE_PER_MEGAJOULE;
            double[] shares = ExtraterrestrialRadiation.hourlyShares(latitudeDeg, dayOfYear);
            for (int h = 0; h < HOURS; h++) {
                wm2[d * HOURS + h] = day * shares[h] / SECONDS_PER_HOUR;
            }
        }
        return new SkyHours(wm2);
    }

    /** Mean radiation above the air in solar hour {@code h} of day {@code d}, W/m². */
    public double wm2(int d, int h) {
        return wm2[d * HOURS + h];
    }
}
