package org.nestyear.core.sun;

/**
 * Light under a cloudless sky.
 *
 * <p>Global light after Haurwitz (1945), "Insolation in relation to cloudiness and cloud density", Journal of
 * Meteorology 2(3):154–166: 1098 · cos Z · exp(−0.059 / cos Z) W/m², with the zenith angle Z of the sun as seen. The
 * diffuse part after equation 1 of Erbs, Klein and Duffie (1982), "Estimation of the diffuse radiation fraction for
 * hourly, daily and monthly-average global radiation", Solar Energy 28(4):293–302, from the clearness, which is the
 * global light over that above the atmosphere. As Haurwitz knows no distance to the sun, the solar constant stands for
 * the light above the atmosphere all year (3 % either way).
 */
public final class ClearSky {
    /** Haurwitz (1945), W/m². */
    private static final double HAURWITZ_WM2 = 1098;
    /** Haurwitz (1945), optical depth of the clear air. */
    private static final double HAURWITZ_DEPTH = 0.059;
    /** Solar constant, W/m²: Kopp and Lean (2011), Geophysical Research Letters 38:L01706. */
    private static final double SOLAR_CONSTANT_WM2 = 1361;
    /** Zenith angle of the level horizon, by definition. */
    private static final double LEVEL_DEG = 90;
    /** Erbs et al. (1982) equation 1: clearness up to which the sky is overcast. */
    private static final double OVERCAST = 0.22;
    /** Erbs et al. (1982) equation 1: clearness from which the sky is clear. */
    private static final double CLEAR = 0.80;
    /** Erbs et al. (1982) equation 1: slope under an overcast sky. */
    private static final double OVERCAST_SLOPE = 0.09;
    /** Erbs et al. (1982) equation 1: diffuse part of a clear sky. */
    private static final double CLEAR_PART = 0.165;
    /** Erbs et al. (1982) equation 1, constant term between the two. */
    private static final double TERM_0 = 0.9511;
    /** Erbs et al. (1982) equation 1, linear term. */
    private static final double TERM_1 = -0.1604;
    /** Erbs et al. (1982) equation 1, quadratic term. */
    private static final double TERM_2 = 4.388;
    /** Erbs et al. (1982) equation 1, cubic term. */
    private static final double TERM_3 = -16.638;
    /** Erbs et al. (1982) equation 1, quartic term. */
    private static final double TERM_4 = 12.336;

    private ClearSky() {}

    /**
     * Light on the level and from the sun under a cloudless sky; none when the sun is down.
     *
     * @param zenithDeg zenith angle of the sun as seen, degrees, 0 to 180
     * @throws IllegalArgumentException if the angle is outside its range
     */
    public static Light at(double zenithDeg) {
        double global = globalWm2(zenithDeg);
        return global > 0 ? split(global, zenithDeg) : Light.NONE;
    }

    /**
     * Global light on the level under a cloudless sky, W/m²; 0 when the sun is down.
     *
     * @param zenithDeg zenith angle of the sun as seen, degrees, 0 to 180
     * @throws IllegalArgumentException if the angle is outside its range
     */
    public static double globalWm2(double zenithDeg) {
        if (!(zenithDeg >= 0 && zenithDeg <= 2 * LEVEL_DEG)) {
            throw new IllegalArgumentException("zenith angle " + zenithDeg + " is outside 0 to 180 degrees");
        }
        if (zenithDeg >= LEVEL_DEG) {
            return 0;
        }
        double cosine = Math.cos(Math.toRadians(zenithDeg));
        return HAURWITZ_WM2 * cosine * Math.exp(-HAURWITZ_DEPTH / cosine);
    }

    /** Parts global light, clear or not, into diffuse light and the sun's beam. */
    private static Light split(double globalWm2, double zenithDeg) {
        double cosine = Math.cos(Math.toRadians(zenithDeg));
        double clearness = globalWm2 / (SOLAR_CONSTANT_WM2 * cosine);
        double diffuse = globalWm2 * diffusePart(clearness);
        return new Light(globalWm2, diffuse, (globalWm2 - diffuse) / cosine);
    }

    private static double diffusePart(double clearness) {
        if (clearness <= OVERCAST) {
            return 1 - OVERCAST_SLOPE * clearness;
        }
        if (clearness > CLEAR) {
            return CLEAR_PART;
        }
        return TERM_0 + clearness * (TERM_1 + clearness * (TERM_2 + clearness * (TERM_3 + clearness * TERM_4)));
    }
}
