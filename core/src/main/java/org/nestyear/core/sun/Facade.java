package org.nestyear.core.sun;

/**
 * Light on the upright front of a house.
 *
 * <p>Isotropic transposition of Liu and Jordan (1963), "The long-term average performance of flat-plate solar-energy
 * collectors", Solar Energy 7(2):53–74, for a vertical wall: half the diffuse light of the sky, half the light the
 * ground throws back, and the sun's beam times the cosine of its angle to the wall. What a skyline or a roof takes away is
 * in {@link Front}.
 */
public final class Facade {
    /**
     * Share of light that ground throws back where nothing better is known: .2, the customary value for grass and bare
     * soil since Liu and Jordan (1963).
     */
    public static final double CUSTOMARY_ALBEDO = 0.2;
    /** A vertical wall sees half the sky and half the ground, by definition: (1 ± cos 90°) / 2. */
    private static final double HALF = 0.5;
    /** A whole turn, by definition. */
    private static final double TURN_DEG = 360;

    private Facade() {}

    /**
     * Light on a front under an open horizon, W/m².
     *
     * @param facesDeg where the front looks, degrees clockwise from north, 0 to 360
     * @param albedo share of light the ground throws back, 0 to 1
     * @throws IllegalArgumentException if facing or albedo is outside its range
     */
    public static double irradianceWm2(SunPosition sun, Light light, double facesDeg, double albedo) {
        if (!(facesDeg >= 0 && facesDeg <= TURN_DEG)) {
            throw new IllegalArgumentException("facing " + facesDeg + " is outside 0 to 360 degrees");
        }
        if (!(albedo >= 0 && albedo <= 1)) {
            throw new IllegalArgumentException("albedo " + albedo + " is outside 0 to 1");
        }
        return irradianceWm2(sun, light, facesDeg, albedo, HALF);
    }

    /** The same on a front that sees this share of the sky's light. */
    static double irradianceWm2(SunPosition sun, Light light, double facesDeg, double albedo, double skyShare) {
        double incidence =
                Math.sin(Math.toRadians(sun.zenithDeg())) * Math.cos(Math.toRadians(sun.azimuthDeg() - facesDeg));
        return light.beamWm2() * Math.max(0, incidence)
                + skyShare * light.diffuseWm2()
                + HALF * albedo * light.globalWm2();
    }
}
