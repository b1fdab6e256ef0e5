package org.nestyear.data.exchange;

/** The point some way off in a direction. */
final class Bearing {
    /** Mean radius of the earth, (2a + b)/3 on WGS 84, m; over a few hundred metres a globe is within half a per cent. */
    private static final double RADIUS_M = 6_371_008.8;

    private static final double TURN_DEG = 360;

    private Bearing() {}

    /**
     * @param distanceM metres along the great circle
     * @param directionDeg degrees clockwise from north at the start
     */
    static Coordinates from(Coordinates start, double distanceM, double directionDeg) {
        double lat = Math.toRadians(start.latitudeDeg());
        double way = distanceM / RADIUS_M;
        double direction = Math.toRadians(directionDeg);
        double sine = Math.sin(lat) * Math.cos(way) + Math.cos(lat) * Math.sin(way) * Math.cos(direction);
        double reached = Math.asin(Math.max(-1, Math.min(1, sine)));
        double east =
                Math.atan2(Math.sin(direction) * Math.sin(way) * Math.cos(lat), Math.cos(way) - Math.sin(lat) * sine);
        // Across the antimeridian the longitude goes on at the other end (RFC 7946 §3.1.9).
        double longitude = Math.IEEEremainder(start.longitudeDeg() + Math.toDegrees(east), TURN_DEG);
        return new Coordinates(Math.toDegrees(reached), longitude);
    }
}
