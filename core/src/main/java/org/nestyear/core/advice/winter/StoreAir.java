package org.nestyear.core.advice.winter;

import org.jspecify.annotations.Nullable;

/**
 * Air about the cocoons.
 *
 * @param humidityPercent relative humidity in the store, above 0 to 100
 * @param room the room in which the store is opened, or null
 */
public record StoreAir(double humidityPercent, @Nullable Room room) {
    /**
     * A room.
     *
     * @param celsius its temperature, °C
     * @param humidityPercent its relative humidity, above 0 to 100
     */
    public record Room(double celsius, double humidityPercent) {}
}
