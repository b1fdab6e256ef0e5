package org.nestyear.core.place;

/**
 * One sighted point of the skyline.
 *
 * @param azimuthDeg degrees clockwise from north, 0 to 360
 * @param elevationDeg degrees above the level, 0 to 90
 */
public record HorizonPoint(double azimuthDeg, double elevationDeg) {
    public HorizonPoint {
        if (!(azimuthDeg >= 0 && azimuthDeg <= 360)) {
            throw new IllegalArgumentException("horizon azimuth " + azimuthDeg + " is outside 0 to 360 degrees");
        }
        if (!(elevationDeg >= 0 && elevationDeg <= 90)) {
            throw new IllegalArgumentException("horizon elevation " + elevationDeg + " is outside 0 to 90 degrees");
        }
    }
}
