package org.nestyear.data.exchange;

/**
 * A point on WGS 84.
 *
 * @param latitudeDeg degrees north, −90 to 90
 * @param longitudeDeg degrees east, −180 to 180
 */
public record Coordinates(double latitudeDeg, double longitudeDeg) {
    /**
     * @throws IllegalArgumentException if a number is outside its range or not a number
     */
    public Coordinates {
        if (!(Math.abs(latitudeDeg) <= 90) || !(Math.abs(longitudeDeg) <= 180)) {
            throw new IllegalArgumentException("latitude " + latitudeDeg + ", longitude " + longitudeDeg
                    + " is no place; latitude goes from -90 to 90 and longitude from -180 to 180 degrees");
        }
    }
}
