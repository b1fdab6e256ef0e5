package org.nestyear.core.sun;

import org.nestyear.core.place.Overhang;
import org.nestyear.core.place.Site;

/**
 * A house front that looks one way, behind its skyline and below its roof.
 *
 * <p>The sun shines on it while it stands before the front, above the skyline and below the edge of the roof. Of an even
 * sky a wall gets (1/π) ∫ cos a ∫ cos² h dh da over the sky it sees, a the turn from straight ahead and h the height: half
 * of it under an open sky, (sin φ)/2 below a roof with shadow angle φ (Liu and Jordan 1963, for an open sky; the integral is
 * the cosine law). What the skyline itself throws back is not counted.
 *
 * @param site the place
 * @param facesDeg where the front looks, degrees clockwise from north, 0 to 360
 * @param skyShare share of an even sky's light that falls on the front, 0 to 0.5
 */
public record Front(Site site, double facesDeg, double skyShare) {
    /** Steps of the turn from straight ahead; numerical. */
    private static final int STEPS = 90;
    /** A right angle, by definition: the sun is in front of a wall. */
    private static final double RIGHT_DEG = 90;
    /** A turn, by definition. */
    private static final double TURN_DEG = 360;

    /** The front of a site that looks this way, degrees clockwise from north, 0 to 360. */
    public static Front of(Site site, double facesDeg) {
        return new Front(site, facesDeg, skyShare(site, facesDeg));
    }

    /** Whether the sun shines on it. */
    public boolean shines(SunPosition sun) {
        double turn = turn(sun.azimuthDeg());
        return sun.elevationDeg() > site.horizonDeg(sun.azimuthDeg())
                && turn < RIGHT_DEG
                && sun.elevationDeg() < roofDeg(site, turn);
    }

    /**
     * Light on it, W/m².
     *
     * @param albedo share of light the ground throws back, 0 to 1
     */
    public double irradianceWm2(SunPosition sun, Light light, double albedo) {
        Light seen = shines(sun) ? light : new Light(light.globalWm2(), light.diffuseWm2(), 0);
        return Facade.irradianceWm2(sun, seen, facesDeg, albedo, skyShare);
    }

    private double turn(double azimuthDeg) {
        double apart = Math.abs(azimuthDeg - facesDeg) % TURN_DEG;
        return Math.min(apart, TURN_DEG - apart);
    }

    /** Height of the roof's edge at a turn from straight ahead, degrees. */
    private static double roofDeg(Site site, double turnDeg) {
        Overhang roof = site.roof();
        return roof == null
                ? RIGHT_DEG
                : Math.toDegrees(
                        Math.atan(Math.tan(Math.toRadians(roof.shadowAngleDeg())) * Math.cos(Math.toRadians(turnDeg))));
    }

    private static double skyShare(Site site, double facesDeg) {
        double stepDeg = 2 * RIGHT_DEG / STEPS;
        double sum = 0;
        for (int i = 0; i < STEPS; i++) {
            double turn = -RIGHT_DEG + (i + 1 / 2.0) * stepDeg;
            double skyline = site.horizonDeg((facesDeg + turn + TURN_DEG) % TURN_DEG);
            double seen = heights(roofDeg(site, Math.abs(turn))) - heights(skyline);
            sum += Math.cos(Math.toRadians(turn)) * Math.max(0, seen);
        }
        return sum * Math.toRadians(stepDeg) / Math.PI;
    }

    /** The integral of cos² from the level up to a height in degrees. */
    private static double heights(double deg) {
        double h = Math.toRadians(deg);
        return (h + Math.sin(h) * Math.cos(h)) / 2;
    }
}
