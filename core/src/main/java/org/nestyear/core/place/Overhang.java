package org.nestyear.core.place;

/**
 * A roof or eave over a house front, as long as it needs to be to either side.
 *
 * @param outM how far it reaches out from the face of the tunnels, m, more than 0 up to 5
 * @param aboveM how far above the middle of the tunnels its outer edge is, m, more than 0 up to 10
 */
public record Overhang(double outM, double aboveM) {
    private static final double WIDEST_M = 5;
    private static final double HIGHEST_M = 10;

    public Overhang {
        check("reaches out", outM, WIDEST_M);
        check("is above the tunnels by", aboveM, HIGHEST_M);
    }

    private static void check(String what, double metres, double most) {
        if (!(metres > 0 && metres <= most)) {
            throw new IllegalArgumentException(
                    "the roof " + what + " " + metres + " m, which is outside 0 to " + most + " m");
        }
    }

    /**
     * How high the sun may stand straight before the front and still shine on the tunnels' middle, degrees. Away from
     * straight ahead the limit is the tangent of this times the cosine of the turn (the vertical shadow angle of building
     * design).
     */
    public double shadowAngleDeg() {
        return Math.toDegrees(Math.atan2(aboveM, outM));
    }
}
