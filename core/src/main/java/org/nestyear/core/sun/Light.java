package org.nestyear.core.sun;

/**
 * Sunlight at one moment, by where it comes from.
 *
 * @param globalWm2 all light on a level surface, W/m²
 * @param diffuseWm2 the part of it that comes from the sky and not straight from the sun, W/m²
 * @param beamWm2 light straight from the sun on a surface that faces it, W/m²
 */
public record Light(double globalWm2, double diffuseWm2, double beamWm2) {
    /** No light at all. */
    public static final Light NONE = new Light(0, 0, 0);

    public Light {
        if (!(globalWm2 >= 0 && diffuseWm2 >= 0 && diffuseWm2 <= globalWm2 && beamWm2 >= 0)) {
            throw new IllegalArgumentException("global " + globalWm2 + ", diffuse " + diffuseWm2 + " and beam "
                    + beamWm2 + " W/m² cannot be parts of one light");
        }
    }
}
