package org.nestyear.core.sun;

import java.time.Instant;
import java.time.ZoneOffset;
import net.e175.klaus.solarpositioning.DeltaT;
import net.e175.klaus.solarpositioning.SPA;
import net.e175.klaus.solarpositioning.SolarPosition;

/**
 * Where the sun stands in the sky.
 *
 * <p>By the Solar Position Algorithm of Reda and Andreas (2004), "Solar position algorithm for solar radiation
 * applications", Solar Energy 76(5):577–589, as implemented by the library solarpositioning; its stated error is
 * 0.0003° for the years −2000 to 6000.
 *
 * @param zenithDeg angle from straight overhead to the sun as it is seen, so with refraction, 0 to 180 degrees
 * @param refractionDeg how far the air lifts the sun, degrees; the zenith angle without air is {@code zenithDeg +
 *     refractionDeg}; 0 once the sun is below the horizon
 * @param azimuthDeg degrees clockwise from north, 0 to 360
 */
public record SunPosition(double zenithDeg, double refractionDeg, double azimuthDeg) {
    /** Straight down, by definition of the zenith angle. */
    private static final double NADIR_DEG = 180;
    /** A whole turn, by definition. */
    private static final double TURN_DEG = 360;
    /** Zenith angle of the level horizon, by definition. */
    private static final double LEVEL_DEG = 90;

    public SunPosition {
        if (!(zenithDeg >= 0 && zenithDeg <= NADIR_DEG && azimuthDeg >= 0 && azimuthDeg <= TURN_DEG)) {
            throw new IllegalArgumentException(
                    "zenith " + zenithDeg + " and azimuth " + azimuthDeg + " are not a direction in the sky");
        }
        if (!(refractionDeg >= 0 && refractionDeg <= 1)) {
            throw new IllegalArgumentException("refraction " + refractionDeg + " is outside 0 to 1 degree");
        }
    }

    /**
     * The sun's place, with the difference between even and earth time estimated for the date.
     *
     * @throws IllegalArgumentException if the library has no answer for this instant
     */
    public static SunPosition of(Observer observer, Instant instant) {
        return of(
                observer,
                instant,
                DeltaT.estimate(instant.atZone(ZoneOffset.UTC).toLocalDate()));
    }

    /**
     * The sun's place.
     *
     * @param deltaTSeconds terrestrial time minus universal time, s; 69 s in 2020
     * @throws IllegalArgumentException if {@code deltaTSeconds} is not a finite number
     */
    public static SunPosition of(Observer observer, Instant instant, double deltaTSeconds) {
        if (!Double.isFinite(deltaTSeconds)) {
            throw new IllegalArgumentException("delta T of " + deltaTSeconds + " s is not a number of seconds");
        }
        SPA.SpaTimeDependent time = SPA.calculateSpaTimeDependentParts(instant.atZone(ZoneOffset.UTC), deltaTSeconds);
        SolarPosition seen = SPA.calculateSolarPositionWithTimeDependentParts(
                observer.latitudeDeg(),
                observer.longitudeDeg(),
                observer.elevationM(),
                observer.pressureHPa(),
                observer.temperatureC(),
                time);
        SolarPosition airless = SPA.calculateSolarPositionWithTimeDependentParts(
                observer.latitudeDeg(), observer.longitudeDeg(), observer.elevationM(), time);
        double lifted = Math.max(0, airless.zenithAngle() - seen.zenithAngle());
        return new SunPosition(seen.zenithAngle(), lifted, seen.azimuth());
    }

    /** Height above the level horizon as seen, degrees, negative when the sun is down. */
    public double elevationDeg() {
        return LEVEL_DEG - zenithDeg;
    }
}
